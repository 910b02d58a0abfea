package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.GeneratedFolder;
import drylap.planning.JobFolder;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.PublishedVisit;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class RegionsTests {
    private static final JobFolder SMALL = GeneratedFolder.of(300, 10, 1);
    private static final JobFolder LARGE = GeneratedFolder.of(1_000, 34, 2);

    private static <T> void assertShared(Function<JobFolder, List<T>> part) {
        assertThat(Regions.of(LARGE).stream().flatMap(region -> part.apply(region).stream()))
                .containsExactlyInAnyOrderElementsOf(part.apply(LARGE));
    }

    @Test
    void a_small_job_is_not_cut() {
        assertThat(Regions.of(SMALL)).containsExactly(SMALL);
    }

    @Test
    void every_opening_facade_site_and_shift_of_a_large_job_is_in_one_region() {
        assertThat(Regions.of(LARGE)).hasSizeGreaterThan(1);
        assertShared(JobFolder::openings);
        assertShared(JobFolder::facades);
        assertShared(JobFolder::sites);
        assertShared(JobFolder::shifts);
    }

    @Test
    void every_region_has_a_crew_for_each_of_its_tasks() {
        assertThat(Regions.of(LARGE))
                .allSatisfy(
                        region -> assertThat(Problem.of(region, null).never()).isEmpty());
    }

    @Test
    void published_visits_stay_whole() {
        var plan = Planner.standard().plan(LARGE, new PlanRequest(null, null, 0L, 1), _ -> {}, () -> false);
        JobFolder again = LARGE.withPublished(plan.visits().stream()
                .map(visit -> new PublishedVisit(visit, false))
                .toList());

        List<JobFolder> regions = Regions.of(again);

        assertThat(regions.stream().flatMap(region -> region.published().stream()))
                .containsExactlyInAnyOrderElementsOf(again.published());
        assertThat(regions)
                .allSatisfy(region -> assertThat(region.published()).allSatisfy(one -> {
                    var visit = one.visit();
                    assertThat(region.openings())
                            .anyMatch(opening -> opening.id().equals(visit.opening()));
                    assertThat(region.shifts())
                            .anyMatch(shift -> shift.crew().equals(visit.crew())
                                    && shift.date().equals(visit.date()));
                }));
    }
}
