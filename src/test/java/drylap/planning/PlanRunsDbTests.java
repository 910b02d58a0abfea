package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB;
import static drylap.persistence.jooq.Tables.PLAN;
import static drylap.persistence.jooq.Tables.PLANNING_RUN;
import static drylap.persistence.jooq.Tables.RUN_POINT;
import static drylap.persistence.jooq.Tables.SCHEDULED_TASKS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.intake.GeneratedFolder;
import drylap.kernel.FolderId;
import drylap.planning.RunState.Status;
import drylap.platform.MetricsText;
import drylap.platform.Subscription;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Predicate;
import org.awaitility.Awaitility;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Runs with the real planner, through the real queue. */
@DbTest
class PlanRunsDbTests {
    private static final Duration PATIENCE = Duration.ofSeconds(120);

    @Autowired
    JobFolders folders;

    @Autowired
    Plans plans;

    @Autowired
    PlanRuns runs;

    @Autowired
    Planner planner;

    @Autowired
    DSLContext db;

    @Autowired
    MetricsText metrics;

    JobFolder folder = GeneratedFolder.of(24, 2, 1);
    FolderId id = new FolderId(0);

    @BeforeEach
    void store_a_folder() {
        id = folders.save("week", folder);
    }

    @Test
    void a_run_ends_with_the_very_plan_that_the_planner_gives_for_its_request() {
        PlanRequest request = new PlanRequest(null, null, 300L, 5);

        RunId run = runs.request(id, request);
        RunState end = await(state -> state.status().ended());

        assertThat(end).returns(run, RunState::id).returns(Status.DONE, RunState::status);
        Plan expected = planner.plan(folder, request, _ -> {}, () -> false);
        assertThat(plans.latest(id)).contains(expected);
        assertThat(end.progress().soft()).isEqualTo(expected.ledger().soft());
        assertThat(end.progress().planned()).isEqualTo(expected.visits().size());
    }

    @Test
    void a_run_that_ended_changes_what_the_node_counts() {
        double runsBefore = counted("drylap_solver_runs_total");
        double movesBefore = counted("drylap_solver_moves_total");

        runs.request(id, new PlanRequest(null, null, 300L, 5));
        RunState end = await(state -> state.status().ended());
        // it is counted once its end is written
        Awaitility.await().atMost(PATIENCE).until(() -> counted("drylap_solver_runs_total") > runsBefore);

        assertThat(counted("drylap_solver_moves_total") - movesBefore)
                .isGreaterThanOrEqualTo(end.progress().moves());
        assertThat(metrics.text()).contains("drylap_jobs_ended_total{how=\"done\",kind=\"plan\"}");
    }

    /** Of a line of the text without labels; 0 where there is none yet. */
    private double counted(String name) {
        return metrics.text()
                .lines()
                .filter(line -> line.startsWith(name + " "))
                .mapToDouble(line -> Double.parseDouble(line.substring(name.length() + 1)))
                .sum();
    }

    @Test
    void the_first_legal_plan_is_there_long_before_the_end_and_stop_keeps_the_best() {
        runs.request(id, PlanRequest.seconds(600));
        await(state -> state.status() == Status.RUNNING && state.progress().planned() > 0);
        Plan first = plans.latest(id).orElseThrow();

        runs.stop(id);
        RunState end = await(state -> state.status().ended());

        Plan best = plans.latest(id).orElseThrow();
        assertThat(end.status()).isEqualTo(Status.STOPPED);
        assertThat(db.fetchCount(PLAN, PLAN.FOLDER_ID.eq(id.value()))).isEqualTo(2);
        assertThat(first.visits()).isNotEmpty();
        assertThat(cost(best)).isLessThanOrEqualTo(cost(first));
    }

    @Test
    void a_newer_request_ends_the_older_run_which_writes_no_more() {
        RunId older = runs.request(id, PlanRequest.seconds(600));
        await(state -> state.progress().planned() > 0);

        RunId newer = runs.request(id, new PlanRequest(null, null, 100L, 1));
        RunState end = await(state -> state.id().equals(newer) && state.status().ended());

        assertThat(end.status()).isEqualTo(Status.DONE);
        assertThat(jobState(older)).isEqualTo("stopped");
        Awaitility.await().during(Duration.ofSeconds(2)).atMost(PATIENCE).until(() -> plansOf(older) == 1);
    }

    @Test
    void a_run_whose_node_died_begins_again_from_its_request() {
        RunId run = runs.request(id, new PlanRequest(null, null, 200L, 3));
        await(state -> state.status().ended());
        leftBehindByADeadNode(run);

        RunState end = await(state -> state.status().ended());

        assertThat(end.status()).isEqualTo(Status.DONE);
        assertThat(db.fetchValue(db.select(JOB.ATTEMPT).from(JOB).where(JOB.ID.eq(run.value()))))
                .isEqualTo(2);
        assertThat(plans.latest(id))
                .contains(planner.plan(folder, new PlanRequest(null, null, 200L, 3), _ -> {}, () -> false));
    }

    @Test
    void how_the_cost_fell_is_kept_with_the_run_and_ends_with_the_plans_own_cost() {
        runs.request(id, PlanRequest.seconds(3));
        RunState end = await(state -> state.status().ended());

        assertThat(end.limit()).isEqualTo(Duration.ofSeconds(3));
        Plan best = plans.latest(id).orElseThrow();
        assertThat(end.points()).hasSizeGreaterThan(1).last().satisfies(point -> {
            assertThat(point.medium()).isEqualTo(best.ledger().medium());
            assertThat(point.soft()).isEqualTo(best.ledger().soft());
            assertThat(point.unplanned()).isEqualTo(best.unplanned().size());
        });
        assertThat(end.points()).extracting(RunPoint::at).isSorted().doesNotHaveDuplicates();
        for (int i = 1; i < end.points().size(); i++)
            assertThat(cost(end.points().get(i)))
                    .isLessThanOrEqualTo(cost(end.points().get(i - 1)));
    }

    @Test
    void a_run_that_begins_again_after_its_node_died_begins_its_points_again() {
        RunId run = runs.request(id, new PlanRequest(null, null, 200L, 3));
        await(state -> state.status().ended());
        db.insertInto(RUN_POINT)
                .values(run.value(), Duration.ofDays(1).toMillis(), 0L, -1L, 0)
                .execute();
        leftBehindByADeadNode(run);

        RunState end = await(state -> state.status().ended());

        assertThat(end.points()).isNotEmpty().noneMatch(point -> point.soft() == -1);
    }

    @Test
    void a_watcher_sees_the_run_grow_and_end_and_then_is_left_alone() {
        List<RunState> seen = new CopyOnWriteArrayList<>();
        Subscription watch = runs.watch(id, seen::add);
        runs.request(id, PlanRequest.seconds(3));

        Awaitility.await()
                .atMost(PATIENCE)
                .until(() -> !seen.isEmpty() && seen.getLast().status().ended());
        watch.close();
        int told = seen.size();
        runs.request(id, new PlanRequest(null, null, 1L, 1));
        await(state -> state.status().ended());

        assertThat(seen).extracting(RunState::status).contains(Status.RUNNING).endsWith(Status.DONE);
        assertThat(seen.getLast().progress().moves()).isPositive();
        assertThat(seen).hasSize(told).doesNotHaveDuplicates();
    }

    @Test
    void a_run_that_cannot_be_done_says_why() {
        JobFolder torn = new JobFolder(
                folder.sites(),
                folder.facades(),
                folder.openings(),
                folder.crews(),
                folder.shifts(),
                folder.travel(),
                folder.forecasts(),
                new LabourTable(List.of()),
                folder.rules(),
                folder.published());
        id = folders.save("without labour", torn);

        runs.request(id, PlanRequest.seconds(1));

        RunState end = await(state -> state.status().ended());
        assertThat(end.status()).isEqualTo(Status.FAILED);
        assertThat(end.failure()).contains("no labour row");
    }

    @Test
    void a_folder_that_is_not_there_cannot_be_planned() {
        assertThatExceptionOfType(UnknownFolder.class)
                .isThrownBy(() -> runs.request(new FolderId(777_777), PlanRequest.seconds(1)));
        assertThat(db.fetchCount(JOB, JOB.PAYLOAD.eq("777777"))).isZero();
    }

    private RunState await(Predicate<RunState> condition) {
        return Awaitility.await()
                .atMost(PATIENCE)
                .until(() -> runs.state(id), state -> state.filter(condition).isPresent())
                .orElseThrow();
    }

    /** As the tables stand when a process is killed in the middle of a run: begun, claimed, and silent for long. */
    private void leftBehindByADeadNode(RunId run) {
        db.update(JOB)
                .set(JOB.STATE, "running")
                .setNull(JOB.ENDED_AT)
                .where(JOB.ID.eq(run.value()))
                .execute();
        db.insertInto(SCHEDULED_TASKS)
                .set(SCHEDULED_TASKS.TASK_NAME, "job")
                .set(SCHEDULED_TASKS.TASK_INSTANCE, Long.toString(run.value()))
                .set(SCHEDULED_TASKS.EXECUTION_TIME, Instant.now().minusSeconds(3_600))
                .set(SCHEDULED_TASKS.PICKED, true)
                .set(SCHEDULED_TASKS.PICKED_BY, "a node that died")
                .set(SCHEDULED_TASKS.LAST_HEARTBEAT, Instant.now().minusSeconds(3_000))
                .set(SCHEDULED_TASKS.VERSION, 7L)
                .execute();
    }

    private String jobState(RunId run) {
        return String.valueOf(db.fetchValue(db.select(JOB.STATE).from(JOB).where(JOB.ID.eq(run.value()))));
    }

    /** The run of the older request has its first plan; a second one would have been written after its end. */
    private int plansOf(RunId run) {
        Long plan = db.fetchValue(
                db.select(PLANNING_RUN.PLAN_ID).from(PLANNING_RUN).where(PLANNING_RUN.JOB_ID.eq(run.value())));
        Long first = db.fetchValue(
                db.select(org.jooq.impl.DSL.min(PLAN.ID)).from(PLAN).where(PLAN.FOLDER_ID.eq(id.value())));
        return plan != null && plan.equals(first) ? 1 : 2;
    }

    private static long cost(RunPoint point) {
        return point.medium() * 1_000_000_000L + point.soft();
    }

    private static long cost(Plan plan) {
        return plan.ledger().medium() * 1_000_000_000L + plan.ledger().soft();
    }
}
