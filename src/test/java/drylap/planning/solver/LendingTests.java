package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.audit.Audit;
import drylap.audit.ClaimedPlan;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.intake.GeneratedFolder;
import drylap.kernel.CrewId;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Visit;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Three regions share the one water tester, who comes every third day: one has a day too few, another one too many. */
class LendingTests {
    private final JobFolder job = everyThirdDay(GeneratedFolder.of(800, 27, 5));
    private List<RegionSearch> regions = List.of();

    private static JobFolder everyThirdDay(JobFolder folder) {
        Set<CrewId> testers = folder.crews().stream()
                .filter(crew -> crew.trade() == Trade.TESTER)
                .map(Crew::id)
                .collect(Collectors.toSet());
        AtomicInteger days = new AtomicInteger();
        return folder.withShifts(folder.shifts().stream()
                .filter(shift -> !testers.contains(shift.crew()) || days.getAndIncrement() % 3 == 0)
                .toList());
    }

    @BeforeEach
    void first_plans() {
        Span span = Span.of(job, null);
        regions = Regions.of(job).stream()
                .map(region -> RegionSearch.begin(region, span))
                .toList();
        regions.forEach(region -> region.improveFirst(() -> false));
        assertThat(regions).extracting(region -> region.lacks().isEmpty()).containsExactly(true, false, true);
    }

    @Test
    void a_day_goes_to_the_region_that_lacks_it_and_the_plan_stays_as_it_was() {
        List<Visit> before = visits();
        List<Shift> all = shifts();
        int own = regions.get(1).folder().shifts().size();

        assertThat(Lending.among(regions, 0)).isTrue();

        assertThat(visits()).containsExactlyInAnyOrderElementsOf(before);
        assertThat(regions.get(1).folder().shifts()).hasSizeGreaterThan(own);
        assertThat(shifts()).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(all);
    }

    @Test
    void with_the_day_everything_has_a_place_in_a_plan_that_keeps_every_rule() {
        var plan = Planner.standard().plan(job, new PlanRequest(null, null, 80_000L, 1), _ -> {}, () -> false);

        assertThat(plan.unplanned()).isEmpty();
        assertThat(Audit.of(job, ClaimedPlan.of(plan), null).breaches()).isEmpty();
    }

    @Test
    void where_no_day_is_idle_one_with_few_tasks_is_lent() {
        regions = List.of(withoutIdleTesters(regions.get(0)), regions.get(1), withoutIdleTesters(regions.get(2)));
        int own = regions.get(1).folder().shifts().size();
        List<Shift> all = shifts();

        assertThat(Lending.among(regions, 0)).isTrue();
        assertThat(regions.get(1).folder().shifts()).hasSize(own);

        assertThat(Lending.among(regions, 99)).isTrue();
        assertThat(regions.get(1).folder().shifts()).hasSizeGreaterThan(own);
        assertThat(shifts()).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(all);
    }

    private RegionSearch withoutIdleTesters(RegionSearch region) {
        Set<CrewId> testers = region.folder().crews().stream()
                .filter(crew -> crew.trade() == Trade.TESTER)
                .map(Crew::id)
                .collect(Collectors.toSet());
        Set<Shift> idle = region.light(0).keySet();
        RegionSearch without = RegionSearch.begin(
                region.folder()
                        .withShifts(region.folder().shifts().stream()
                                .filter(shift -> !testers.contains(shift.crew()) || !idle.contains(shift))
                                .toList()),
                Span.of(job, null));
        without.improveFirst(() -> false);
        assertThat(without.lacks()).isEmpty();
        return without;
    }

    @Test
    void the_days_of_a_plan_that_people_have_are_not_lent() {
        var had = Planner.standard().plan(job, new PlanRequest(null, null, 0L, 1), _ -> {}, () -> false);
        JobFolder published = job.withPublished(had.visits().stream()
                .map(visit -> new drylap.planning.PublishedVisit(visit, false))
                .toList());
        Span span = Span.of(job, null);
        var again = Regions.of(published).stream()
                .map(region -> RegionSearch.begin(region, span))
                .toList();

        assertThat(Lending.among(again, 0)).isFalse();
    }

    private List<Shift> shifts() {
        return regions.stream()
                .flatMap(region -> region.folder().shifts().stream())
                .toList();
    }

    private List<Visit> visits() {
        return regions.stream()
                .flatMap(region -> region.plan().visits().stream())
                .toList();
    }
}
