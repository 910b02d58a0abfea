package drylap.audit;

import drylap.crews.TravelTimes;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.kernel.RuleBook;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.CoverNow;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** The two sites and their plan, ready to be changed in one place; each change gives a new case. */
record Case(
        JobFolder folder,
        List<Visit> visits,
        List<ClaimedPlan.Unplanned> unplanned,
        List<CoverNow> coverNow,
        @Nullable Ledger ledger,
        @Nullable Instant now) {
    static Case legal() {
        return new Case(TwoSites.folder(), TwoSites.visits(), TwoSites.unplanned(), List.of(), null, null);
    }

    AuditReport audit() {
        return Audit.of(folder, new ClaimedPlan(visits, unplanned, coverNow, null, ledger), now);
    }

    Case visits(List<Visit> changed) {
        return new Case(folder, changed, unplanned, coverNow, ledger, now);
    }

    Case folder(JobFolder changed) {
        return new Case(changed, visits, unplanned, coverNow, ledger, now);
    }

    Case unplanned(List<ClaimedPlan.Unplanned> changed) {
        return new Case(folder, visits, changed, coverNow, ledger, now);
    }

    Case covering(CoverNow... changed) {
        return new Case(folder, visits, unplanned, List.of(changed), ledger, now);
    }

    Case ledger(Ledger changed) {
        return new Case(folder, visits, unplanned, coverNow, changed, now);
    }

    Case now(String time) {
        return new Case(folder, visits, unplanned, coverNow, ledger, TwoSites.at(time));
    }

    Visit visit(String opening, Task task) {
        return visits.stream()
                .filter(visit -> visit.opening().value().equals(opening) && visit.task() == task)
                .findFirst()
                .orElseThrow();
    }

    /** Changes one visit in its place in the list and leaves the rest as it is. */
    Case edit(String opening, Task task, UnaryOperator<Visit> change) {
        Visit old = visit(opening, task);
        return visits(visits.stream()
                .map(visit -> visit == old ? change.apply(visit) : visit)
                .toList());
    }

    /** The same minutes at another time; the sheets are numbered and sorted again. */
    Case move(String opening, Task task, String start) {
        return give(opening, task, visit(opening, task).crew().value(), start);
    }

    Case give(String opening, Task task, String crew, String start) {
        Visit old = visit(opening, task);
        int minutes = (int) Duration.between(old.start(), old.end()).toMinutes();
        return edit(opening, task, visit -> TwoSites.visit(crew, 1, opening, task, start, minutes))
                .tidy();
    }

    Case add(String crew, String opening, Task task, String start, int minutes) {
        List<Visit> more = new ArrayList<>(visits);
        more.add(TwoSites.visit(crew, 1, opening, task, start, minutes));
        return visits(more).tidy();
    }

    private Case tidy() {
        List<Visit> sorted = visits.stream()
                .sorted(Comparator.comparing(Visit::crew).thenComparing(Visit::start))
                .toList();
        Map<String, Integer> numbers = new HashMap<>();
        return visits(sorted.stream()
                .map(visit -> numbered(visit, numbers.merge(visit.crew() + " " + visit.date(), 1, Integer::sum)))
                .toList());
    }

    static Visit numbered(Visit v, int sequence) {
        return new Visit(
                v.crew(), v.date(), sequence, v.facade(), v.level(), v.opening(), v.task(), v.start(), v.end());
    }

    static Visit by(Visit v, String crew) {
        return new Visit(
                new CrewId(crew),
                v.date(),
                v.sequence(),
                v.facade(),
                v.level(),
                v.opening(),
                v.task(),
                v.start(),
                v.end());
    }

    static Visit lasting(Visit v, int minutes) {
        return new Visit(
                v.crew(),
                v.date(),
                v.sequence(),
                v.facade(),
                v.level(),
                v.opening(),
                v.task(),
                v.start(),
                v.start().plus(Duration.ofMinutes(minutes)));
    }

    Case opening(String id, UnaryOperator<Opening> change) {
        return folder(new Parts(folder)
                .openings(folder.openings().stream()
                        .map(opening -> opening.id().equals(new OpeningId(id)) ? change.apply(opening) : opening)
                        .toList())
                .folder());
    }

    Case rule(Rule rule, double value) {
        return folder(
                new Parts(folder).rules(folder.rules().with(null, rule, value)).folder());
    }

    Case rule(SiteId site, Rule rule, double value) {
        return folder(
                new Parts(folder).rules(folder.rules().with(site, rule, value)).folder());
    }

    Case road(String from, String to, int minutes) {
        Map<TravelTimes.Leg, Integer> given = new HashMap<>(folder.travel().given());
        given.put(new TravelTimes.Leg(from, to), minutes);
        return folder(new Parts(folder).travel(new TravelTimes(given)).folder());
    }

    Case weather(String site, String hour, UnaryOperator<ForecastHour> change) {
        Instant start = TwoSites.at(hour);
        UnaryOperator<Forecast> changed = forecast -> new Forecast(
                forecast.site(),
                forecast.hours().stream()
                        .map(h -> h.start().equals(start) ? change.apply(h) : h)
                        .toList());
        return folder(new Parts(folder)
                .forecasts(folder.forecasts().stream()
                        .map(f -> f.site().equals(new SiteId(site)) ? changed.apply(f) : f)
                        .toList())
                .folder());
    }

    Case published(List<PublishedVisit> changed) {
        return folder(folder.withPublished(changed));
    }

    /** A job folder taken apart, to put one part of it in anew. */
    private static final class Parts {
        private final JobFolder old;
        private List<Opening> openings;
        private TravelTimes travel;
        private List<Forecast> forecasts;
        private RuleBook rules;

        Parts(JobFolder old) {
            this.old = old;
            openings = old.openings();
            travel = old.travel();
            forecasts = old.forecasts();
            rules = old.rules();
        }

        Parts openings(List<Opening> changed) {
            openings = changed;
            return this;
        }

        Parts travel(TravelTimes changed) {
            travel = changed;
            return this;
        }

        Parts forecasts(List<Forecast> changed) {
            forecasts = changed;
            return this;
        }

        Parts rules(RuleBook changed) {
            rules = changed;
            return this;
        }

        JobFolder folder() {
            return new JobFolder(
                    old.sites(),
                    old.facades(),
                    openings,
                    old.crews(),
                    old.shifts(),
                    travel,
                    forecasts,
                    old.labour(),
                    rules,
                    old.published());
        }
    }
}
