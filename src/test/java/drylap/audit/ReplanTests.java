package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.GeneratedFolder;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.LedgerTerm;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A plan that people have is planned again: as long as nothing changed it stays, and what rain does not touch mostly stays too. */
class ReplanTests {
    private static final JobFolder JOB = GeneratedFolder.of(600, 20, 4);

    private static Plan plan(JobFolder folder, long moves) {
        return Planner.standard().plan(folder, new PlanRequest(null, null, moves, 1), _ -> {}, () -> false);
    }

    private static JobFolder published(JobFolder folder, Plan plan) {
        return folder.withPublished(plan.visits().stream()
                .map(visit -> new PublishedVisit(visit, false))
                .toList());
    }

    private static long changed(Plan plan) {
        return plan.ledger().lines().stream()
                .filter(line -> line.term() == LedgerTerm.CHANGED)
                .findFirst()
                .orElseThrow()
                .amount();
    }

    @Test
    void a_published_plan_that_nothing_has_touched_is_the_first_plan_again() {
        Plan before = plan(JOB, 400);

        Plan after = plan(published(JOB, before), 0);

        assertThat(after.visits()).isEqualTo(before.visits());
        assertThat(changed(after)).isZero();
    }

    @Test
    void rain_over_one_site_moves_what_it_touches_and_little_else() {
        Plan before = plan(JOB, 400);
        Visit wet = firstInstall(before);
        JobFolder after = rained(before, wet);

        Plan again = plan(after, 400);

        assertThat(Audit.of(after, ClaimedPlan.of(again), null).breaches()).isEmpty();
        assertThat(again.visits()).doesNotContain(wet);
        assertThat(changed(again)).isPositive();
        List<Visit> dry = visitsBut(wet.facade().site(), before);
        assertThat(dry.stream().filter(visit -> !keeps(visit, again)).count()).isLessThanOrEqualTo(dry.size() / 20);
    }

    private static List<Visit> visitsBut(SiteId site, Plan plan) {
        return plan.visits().stream()
                .filter(visit -> !visit.facade().site().equals(site))
                .toList();
    }

    /** Crew and day. */
    private static boolean keeps(Visit visit, Plan plan) {
        return plan.visits().stream()
                .anyMatch(now -> now.opening().equals(visit.opening())
                        && now.task() == visit.task()
                        && now.crew().equals(visit.crew())
                        && now.date().equals(visit.date()));
    }

    /** A good plan, so that what a long search finds is due to the rain and not to what was bad before. */
    @Test
    void a_long_search_leaves_to_its_crew_and_day_what_the_rain_has_not_touched() {
        Plan before = plan(JOB, 20_000);

        Plan again = plan(rained(before, firstInstall(before)), 20_000);

        assertThat(changed(again)).isBetween(1L, before.visits().size() / 20L);
    }

    /** The job with the plan published, and rain over the site of a visit from its start on. */
    private static JobFolder rained(Plan plan, Visit wet) {
        return rain(published(JOB, plan), wet.facade().site(), wet.start());
    }

    private static Visit firstInstall(Plan plan) {
        return plan.visits().stream()
                .filter(visit -> visit.task() == Task.INSTALL)
                .min(Comparator.comparing(Visit::start))
                .orElseThrow();
    }

    private static JobFolder rain(JobFolder folder, SiteId site, Instant from) {
        Instant until = from.plus(Duration.ofHours(6));
        return new JobFolder(
                folder.sites(),
                folder.facades(),
                folder.openings(),
                folder.crews(),
                folder.shifts(),
                folder.travel(),
                folder.forecasts().stream()
                        .map(forecast -> forecast.site().equals(site) ? rain(forecast, from, until) : forecast)
                        .toList(),
                folder.labour(),
                folder.rules(),
                folder.published());
    }

    private static Forecast rain(Forecast forecast, Instant from, Instant until) {
        return new Forecast(
                forecast.site(),
                forecast.hours().stream()
                        .map(hour -> hour.start().plusSeconds(3_600).isAfter(from)
                                        && hour.start().isBefore(until)
                                ? wet(hour)
                                : hour)
                        .toList());
    }

    private static ForecastHour wet(ForecastHour hour) {
        return new ForecastHour(
                hour.start(),
                3,
                0.9,
                hour.windMs(),
                hour.gustMs(),
                hour.windFromDeg(),
                hour.temperatureC(),
                hour.relativeHumidity());
    }
}
