package drylap.planning;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.weather.Forecast;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Everything that one planning run is told: the job folder of the contract, checked and linked. Every reference in it
 * resolves, a crew has at most one shift a date, and lists keep the order of their files.
 */
public record JobFolder(
        List<Site> sites,
        List<Facade> facades,
        List<Opening> openings,
        List<Crew> crews,
        List<Shift> shifts,
        TravelTimes travel,
        List<Forecast> forecasts,
        LabourTable labour,
        RuleBook rules,
        List<PublishedVisit> published) {
    public JobFolder {
        sites = List.copyOf(sites);
        facades = List.copyOf(facades);
        openings = List.copyOf(openings);
        crews = List.copyOf(crews);
        shifts = List.copyOf(shifts);
        forecasts = List.copyOf(forecasts);
        published = List.copyOf(published);
    }

    /** With the same rules at every site. */
    public JobFolder(
            List<Site> sites,
            List<Facade> facades,
            List<Opening> openings,
            List<Crew> crews,
            List<Shift> shifts,
            TravelTimes travel,
            List<Forecast> forecasts,
            LabourTable labour,
            Rules rules,
            List<PublishedVisit> published) {
        this(sites, facades, openings, crews, shifts, travel, forecasts, labour, RuleBook.of(rules), published);
    }

    /** The latest limit of any shift, overtime included; none where nobody comes. */
    public Optional<Instant> lastLimit() {
        return shifts.stream().map(Shift::limit).max(Comparator.naturalOrder());
    }

    public JobFolder withOpenings(List<Opening> now) {
        return new JobFolder(sites, facades, now, crews, shifts, travel, forecasts, labour, rules, published);
    }

    public JobFolder withCrews(List<Crew> now) {
        return new JobFolder(sites, facades, openings, now, shifts, travel, forecasts, labour, rules, published);
    }

    public JobFolder withForecasts(List<Forecast> now) {
        return new JobFolder(sites, facades, openings, crews, shifts, travel, now, labour, rules, published);
    }

    public JobFolder withShifts(List<Shift> now) {
        return new JobFolder(sites, facades, openings, crews, now, travel, forecasts, labour, rules, published);
    }

    public JobFolder withRules(RuleBook now) {
        return new JobFolder(sites, facades, openings, crews, shifts, travel, forecasts, labour, now, published);
    }

    public JobFolder withPublished(List<PublishedVisit> visits) {
        return new JobFolder(sites, facades, openings, crews, shifts, travel, forecasts, labour, rules, visits);
    }
}
