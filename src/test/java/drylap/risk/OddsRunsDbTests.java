package drylap.risk;

import static drylap.persistence.jooq.Tables.JOB;
import static drylap.persistence.jooq.Tables.ODDS_RUN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.DbTest;
import drylap.climate.KeptNormals;
import drylap.climate.MonthlyNormals;
import drylap.intake.GeneratedFolder;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.ChangedRules;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.Plan;
import drylap.planning.PlanId;
import drylap.planning.Plans;
import drylap.planning.RuleRequest;
import drylap.planning.RunState.Status;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.risk.OddsState.Odds;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.awaitility.Awaitility;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.core.env.Environment;

@DbTest
class OddsRunsDbTests {
    private static final Duration PATIENCE = Duration.ofSeconds(120);
    private static final RiskRequest SHORT = new RiskRequest(200, 7);
    private static final RiskRequest LONG = new RiskRequest(100_000, 7);

    @Autowired
    OddsRuns odds;

    @Autowired
    JobFolders folders;

    @Autowired
    CurrentFolders current;

    @Autowired
    Plans plans;

    @Autowired
    ChangedRules rules;

    @Autowired
    KeptNormals normals;

    @Autowired
    StepLog log;

    @Autowired
    OpeningStates states;

    @Autowired
    TestPeople people;

    @Autowired
    DSLContext db;

    @Autowired
    Environment environment;

    private final JobFolder folder = GeneratedFolder.of(24, 2, 1);
    private final Plan plan = Demo.first(folder);
    private FolderId id = new FolderId(0);
    private PlanId planId = new PlanId(0);
    private Person who =
            new Person(new drylap.kernel.PersonId(0), "-", "-", Role.SCHEDULER, Reach.EVERYWHERE, null, false);

    @BeforeEach
    void store_a_folder_with_a_plan() {
        who = people.scheduler();
        id = folders.save("week", folder);
        planId = plans.save(id, plan, folder);
    }

    @Test
    void a_reckoning_ends_with_the_very_report_that_its_folder_plan_and_seed_give() {
        assertThat(odds.state(who, id, planId)).isEmpty();

        odds.begin(who, id, planId, SHORT);
        OddsState end = await(state -> state.status().ended());

        assertThat(end)
                .returns(Status.DONE, OddsState::status)
                .returns(SHORT.trials(), OddsState::done)
                .returns(true, OddsState::holds);
        assertThat(found(end).report())
                .isEqualTo(Risk.of(
                        current.load(id),
                        plan,
                        new RiskRequest(SHORT.trials(), SHORT.seed(), plan.start(), List.of())));
        assertThat(odds.underWay(who, planId)).isEmpty();
    }

    @Test
    void normals_that_are_brought_in_make_odds_old_and_the_next_ones_go_by_them() {
        odds.begin(who, id, planId, SHORT);
        await(state -> state.status() == Status.DONE);
        var site = folder.sites().getFirst().id();
        var wet = IntStream.rangeClosed(1, 12)
                .mapToObj(month -> new MonthlyNormals(site, month, 300, 25))
                .toList();

        normals.keep(who, id, site, wet);

        assertThat(found(odds.state(who, id, planId).orElseThrow()).changed()).containsExactly(OddsPart.NORMALS);
        odds.begin(who, id, planId, SHORT);
        OddsState again = await(OddsState::holds);
        assertThat(found(again).report())
                .isEqualTo(Risk.of(
                        current.load(id), plan, new RiskRequest(SHORT.trials(), SHORT.seed(), plan.start(), wet)));
    }

    @Test
    void another_node_sees_how_far_it_has_come_and_can_stop_it() {
        odds.begin(who, id, planId, SHORT);
        await(state -> state.status() == Status.DONE);
        odds.begin(who, id, planId, LONG);
        try (var second = new SpringApplicationBuilder(DbTest.Application.class)
                .web(WebApplicationType.NONE)
                .run(
                        "--drylap.db.url=" + environment.getRequiredProperty("drylap.db.url"),
                        "--drylap.db.user=postgres",
                        "--drylap.work.regular=false")) {
            OddsRuns there = second.getBean(OddsRuns.class);
            int early = awaitDone(there, 0);
            int later = awaitDone(there, early);
            assertThat(later).isGreaterThan(early).isLessThan(LONG.trials());

            there.stop(who, id, planId);
        }

        OddsState end = await(state -> state.status().ended());
        assertThat(end.status()).isEqualTo(Status.STOPPED);
        assertThat(found(end).report().trials()).as("those from before stay").isEqualTo(SHORT.trials());
    }

    @Test
    void whoever_asks_while_it_is_under_way_joins_it() {
        odds.begin(who, id, planId, LONG);
        odds.begin(people.scheduler(), id, planId, LONG);

        assertThat(db.fetchCount(ODDS_RUN, ODDS_RUN.PLAN_ID.eq(planId.value()))).isEqualTo(1);
        odds.stop(who, id, planId);
        await(state -> state.status().ended());
    }

    @Test
    void odds_are_old_once_the_log_goes_on_or_a_rule_changes_and_hold_when_reckoned_anew() {
        odds.begin(who, id, planId, SHORT);
        RiskReport before = found(await(OddsState::holds)).report();

        markALine();
        assertThat(found(state())).returns(before, Odds::report);
        assertThat(found(state()).changed()).containsExactly(OddsPart.LOG);
        rules.change(who, id, new RuleRequest(null, Rule.COVER_MIN, 45.0, "a larger cover", 0));
        assertThat(found(state()).changed()).containsExactlyInAnyOrder(OddsPart.LOG, OddsPart.RULES);
        assertThat(state().holds()).isFalse();

        odds.begin(who, id, planId, SHORT);
        assertThat(found(await(OddsState::holds)).report()).isNotEqualTo(before);
        assertThat(db.fetchCount(ODDS_RUN, ODDS_RUN.PLAN_ID.eq(planId.value())))
                .as("the older report is gone")
                .isEqualTo(1);
    }

    @Test
    void another_plan_has_no_odds_until_they_are_reckoned() {
        odds.begin(who, id, planId, SHORT);
        await(OddsState::holds);

        PlanId newer = plans.save(id, plan, folder);

        assertThat(odds.state(who, id, newer)).isEmpty();
    }

    @Test
    void a_person_sees_the_odds_of_their_own_sites_alone_and_asks_only_where_all_are_theirs() {
        odds.begin(who, id, planId, SHORT);
        RiskReport whole = found(await(OddsState::holds)).report();
        SiteId mine = folder.sites().getFirst().id();
        Person ofOne = people.add(Role.SCHEDULER, Reach.of(List.of(mine)), null);

        Odds seen = found(odds.state(ofOne, id, planId).orElseThrow());

        RiskReport part = seen.report();
        assertThat(seen.everySite()).isFalse();
        assertThat(part.handovers())
                .isNotEmpty()
                .isEqualTo(whole.handovers().stream()
                        .filter(one -> one.facade().site().equals(mine))
                        .toList());
        assertThat(part.openings())
                .isNotEmpty()
                .hasSizeLessThan(whole.openings().size())
                .allMatch(one -> one.facade().site().equals(mine));
        assertThat(part.climates()).extracting(RiskReport.ClimateUsed::site).containsExactly(mine);
        assertThat(part.crewDays())
                .hasSizeLessThan(whole.crewDays().size())
                .allMatch(one -> one.sites().equals(List.of(mine)));
        assertThat(part.days()).isEmpty();
        assertThat(part.totals()).isNull();
        assertThat(whole.totals()).isNotNull();
        assertThat(odds.mayBegin(ofOne, id)).isFalse();
        refused(() -> odds.begin(ofOne, id, planId));
        refused(() -> odds.stop(ofOne, id, planId));
    }

    @Test
    void nobody_but_a_scheduler_sees_or_asks() {
        odds.begin(who, id, planId, SHORT);
        await(OddsState::holds);
        for (Role role : List.of(Role.WINDOW_CREW, Role.FOLLOW_ON, Role.TESTER, Role.ADMINISTRATOR)) {
            Person other = people.add(
                    role,
                    Reach.EVERYWHERE,
                    role == Role.WINDOW_CREW || role == Role.FOLLOW_ON || role == Role.TESTER ? "W1" : null);
            refused(() -> odds.state(other, id, planId));
            refused(() -> odds.underWay(other, planId));
            refused(() -> odds.begin(other, id, planId));
        }
    }

    @Test
    void a_plan_of_another_folder_is_refused() {
        FolderId other = folders.save("other", folder);

        assertThatThrownBy(() -> odds.begin(who, other, planId))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no plan of job folder " + other.value());
        assertThatThrownBy(() -> odds.state(who, other, planId)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_report_that_an_older_version_wrote_is_none() {
        odds.begin(who, id, planId, SHORT);
        await(OddsState::holds);
        db.update(ODDS_RUN)
                .set(ODDS_RUN.REPORT, "{\"trials\": \"many\"}")
                .where(ODDS_RUN.PLAN_ID.eq(planId.value()))
                .execute();

        assertThat(state().odds()).isNull();
        assertThat(state().holds()).isFalse();
    }

    @Test
    void a_job_that_fails_says_why_and_keeps_the_odds_from_before() {
        odds.begin(who, id, planId, SHORT);
        await(OddsState::holds);
        db.update(ODDS_RUN)
                .set(ODDS_RUN.TRIALS, 250_000)
                .where(ODDS_RUN.PLAN_ID.eq(planId.value()))
                .execute();
        leftBehindByADeadNode();

        OddsState end = await(state -> state.status() == Status.FAILED);

        assertThat(end.failure()).contains("250000 trials; accepted: 100 to 100000");
        assertThat(end.odds()).isNotNull();
    }

    private void leftBehindByADeadNode() {
        long job = Objects.requireNonNull(
                db.fetchValue(db.select(ODDS_RUN.JOB_ID).from(ODDS_RUN).where(ODDS_RUN.PLAN_ID.eq(planId.value()))));
        db.update(JOB)
                .set(JOB.STATE, "running")
                .setNull(JOB.ENDED_AT)
                .where(JOB.ID.eq(job))
                .execute();
        var claims = drylap.persistence.jooq.Tables.SCHEDULED_TASKS;
        db.insertInto(claims)
                .set(claims.TASK_NAME, "job")
                .set(claims.TASK_INSTANCE, Long.toString(job))
                .set(claims.EXECUTION_TIME, Instant.now().minusSeconds(3_600))
                .set(claims.PICKED, true)
                .set(claims.PICKED_BY, "a node that died")
                .set(claims.LAST_HEARTBEAT, Instant.now().minusSeconds(3_000))
                .set(claims.VERSION, 7L)
                .execute();
    }

    private void markALine() {
        var opening = folder.openings().getFirst();
        var line = states.of(who, id, opening.id()).list().lines().getFirst();
        log.mark(who, MarkRequest.done(UUID.randomUUID(), id, opening.id(), line.code(), Instant.now()));
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable asked) {
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(asked);
    }

    private static Odds found(OddsState state) {
        return Objects.requireNonNull(state.odds());
    }

    private OddsState state() {
        return odds.state(who, id, planId).orElseThrow();
    }

    private OddsState await(Predicate<OddsState> wanted) {
        return Awaitility.await().atMost(PATIENCE).until(this::state, wanted);
    }

    private int awaitDone(OddsRuns there, int more) {
        return Awaitility.await()
                .atMost(PATIENCE)
                .until(() -> there.underWay(who, planId).orElse(-1), done -> done > more);
    }
}
