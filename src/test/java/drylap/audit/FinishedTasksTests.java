package drylap.audit;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.GeneratedFolder;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Visit;
import drylap.sites.Opening;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Planner and audit read the contract's column {@code finished} alike, each with code of its own. */
class FinishedTasksTests {
    private static final JobFolder WHOLE = GeneratedFolder.of(30, 2, 3);
    /** So long ago that an apron which still counted as free would be far beyond its days. */
    private static final Instant LONG_AGO = Instant.parse("2020-01-01T12:00:00Z");

    @Test
    void finished_tasks_are_not_planned_and_hold_nothing_up() {
        JobFolder folder = withFinished(Set.of(Task.TEST, Task.WRAP));

        Plan plan = Planner.standard().plan(folder, new PlanRequest(null, null, 2_000L, 1), _ -> {}, () -> false);

        assertThat(Audit.of(folder, ClaimedPlan.of(plan), null).breaches()).isEmpty();
        assertThat(plan.visits())
                .filteredOn(visit -> visit.opening().equals(first(folder).id()))
                .extracting(Visit::task)
                .containsExactly(Task.CLAD);
    }

    @Test
    void an_apron_that_was_never_wrapped_is_too_late_by_now() {
        Opening before = first(withFinished(Set.of(Task.TEST, Task.WRAP)));
        JobFolder folder = withFinished(Set.of());

        Plan plan = Planner.standard().plan(folder, new PlanRequest(null, null, 2_000L, 1), _ -> {}, () -> false);

        assertThat(plan.visits())
                .filteredOn(visit -> visit.opening().equals(before.id()))
                .extracting(Visit::task)
                .doesNotContain(Task.WRAP, Task.CLAD);
    }

    @Test
    void a_visit_for_a_finished_task_is_a_breach() {
        Plan plan = Planner.standard().plan(WHOLE, new PlanRequest(null, null, 2_000L, 1), _ -> {}, () -> false);
        Visit wrap = plan.visits().stream()
                .filter(visit -> visit.task() == Task.WRAP)
                .findFirst()
                .orElseThrow();
        JobFolder folder = standing(WHOLE, wrap.opening(), 0, null, Set.of(Task.WRAP));

        assertThat(Audit.of(folder, new ClaimedPlan(plan.visits(), null, null, null, null), null)
                        .breaches())
                .anyMatch(breach -> breach.rule() == ContractRule.TASK_NEEDED
                        && breach.where().words().contains(wrap.opening().value()));
    }

    private static JobFolder withFinished(Set<Task> finished) {
        Opening one = first(WHOLE);
        return standing(WHOLE, one.id(), one.stepList().last(), LONG_AGO, finished);
    }

    /** One that is to be wrapped. */
    private static Opening first(JobFolder folder) {
        return folder.openings().stream()
                .filter(opening -> opening.designedTasks().contains(Task.WRAP))
                .findFirst()
                .orElseThrow();
    }

    private static JobFolder standing(
            JobFolder folder,
            OpeningId id,
            int done,
            @org.jspecify.annotations.Nullable Instant at,
            Set<Task> finished) {
        List<Opening> openings = new ArrayList<>();
        for (Opening opening : folder.openings())
            openings.add(opening.id().equals(id) ? opening.standing(done, at, finished) : opening);
        return folder.withOpenings(openings);
    }
}
