package drylap.planning;

import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.crews.TravelTimes;
import drylap.kernel.RuleBook;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.sites.Site;
import drylap.weather.Forecast;
import java.time.Instant;
import java.time.ZoneId;
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

    /** When the first shift starts; none where nobody comes. */
    public Optional<Instant> firstStart() {
        return shifts.stream().map(Shift::startsAt).min(Comparator.naturalOrder());
    }

    /** The latest limit of any shift, overtime included; none where nobody comes. */
    public Optional<Instant> lastLimit() {
        return shifts.stream().map(Shift::limit).max(Comparator.naturalOrder());
    }

    /** That of one site; empty where nothing is forecast. */
    public Forecast forecast(SiteId site) {
        return forecasts.stream()
                .filter(one -> one.site().equals(site))
                .findFirst()
                .orElseGet(() -> Forecast.none(site));
    }

    public ZoneId zone(SiteId site) {
        return sites.stream()
                .filter(one -> one.id().equals(site))
                .map(Site::zone)
                .findFirst()
                .orElseThrow();
    }

    /** Travel minutes from each site to each, both in the order of the sites. */
    public int[][] roads() {
        int[][] minutes = new int[sites.size()][sites.size()];
        for (int a = 0; a < minutes.length; a++)
            for (int b = 0; b < minutes.length; b++)
                minutes[a][b] = travel.minutes(
                        sites.get(a).id().value(),
                        sites.get(a).place(),
                        sites.get(b).id().value(),
                        sites.get(b).place());
        return minutes;
    }

    /** Travel minutes of a crew from its base to each site, in their order. */
    public int[] wayOut(Crew crew) {
        return sites.stream()
                .mapToInt(site ->
                        travel.minutes(crew.id().value(), crew.base(), site.id().value(), site.place()))
                .toArray();
    }

    /** The same from each site back. */
    public int[] wayBack(Crew crew) {
        return sites.stream()
                .mapToInt(site -> travel.minutes(
                        site.id().value(), site.place(), crew.id().value(), crew.base()))
                .toArray();
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

    public JobFolder withLabour(LabourTable now) {
        return new JobFolder(sites, facades, openings, crews, shifts, travel, forecasts, now, rules, published);
    }

    public JobFolder withRules(RuleBook now) {
        return new JobFolder(sites, facades, openings, crews, shifts, travel, forecasts, labour, now, published);
    }

    public JobFolder withPublished(List<PublishedVisit> visits) {
        return new JobFolder(sites, facades, openings, crews, shifts, travel, forecasts, labour, rules, visits);
    }
}
