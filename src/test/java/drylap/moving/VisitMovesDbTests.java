package drylap.moving;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static drylap.persistence.jooq.Tables.PIN;
import static drylap.persistence.jooq.Tables.PLAN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.DbTest;
import drylap.audit.Audit;
import drylap.audit.ClaimedPlan;
import drylap.audit.ContractRule;
import drylap.audit.MoveVerdict;
import drylap.crews.AbsenceRequest;
import drylap.crews.AbsenceResult;
import drylap.crews.Absences;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolders;
import drylap.planning.Pins;
import drylap.planning.Plan;
import drylap.planning.PlanId;
import drylap.planning.PlanRequest;
import drylap.planning.PlanRuns;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * On the quay folder's first plan, window crew W1 installs on Monday: QW1-01 at 07:13, QW2-01 at 07:48, MS1-01 at 09:26 and
 * MS1-02 from 10:17 to 11:00.
 */
@DbTest
class VisitMovesDbTests {
    private static final CrewId W1 = new CrewId("W1");

    @Autowired
    VisitMoves moves;

    @Autowired
    JobFolders folders;

    @Autowired
    CurrentFolders current;

    @Autowired
    Plans plans;

    @Autowired
    PlanRuns runs;

    @Autowired
    Pins pins;

    @Autowired
    Publications publications;

    @Autowired
    Absences absences;

    @Autowired
    TestPeople people;

    @Autowired
    DSLContext db;

    private FolderId folder = new FolderId(0);
    private PlanId plan = new PlanId(0);
    private Person scheduler;

    @BeforeEach
    void a_planned_week() {
        scheduler = people.scheduler();
        folder = folders.save("moves", new QuayFolder().folder());
        plan = plans.save(folder, planned());
    }

    @Test
    void a_legal_move_is_a_new_plan_that_differs_in_that_visit() {
        var result = (MoveResult.Moved) moves.move(scheduler, last(), W1, at("13T10:25"));

        Plan before = plans.load(plan);
        Plan after = plans.load(result.plan());
        assertThat(result.plan()).isNotEqualTo(plan);
        assertThat(install(after, "MS1-02").start()).isEqualTo(at("13T10:25"));
        assertThat(without(after, "MS1-02")).isEqualTo(without(before, "MS1-02"));
        assertThat(Audit.of(current.load(folder), ClaimedPlan.of(after), after.start())
                        .breaches())
                .isEmpty();
    }

    @Test
    void a_moved_visit_is_pinned_and_the_next_plan_keeps_it() {
        moves.move(scheduler, last(), W1, at("13T10:25"));

        var next = Planner.standard()
                .plan(current.load(folder), new PlanRequest(null, null, 100L, 2), _ -> {}, () -> false);

        assertThat(install(next, "MS1-02").start()).isEqualTo(at("13T10:25"));
        assertThat(db.fetchCount(PIN, PIN.FOLDER_ID.eq(folder.value()))).isOne();
    }

    @Test
    void a_visit_that_is_let_go_is_planned_anew() {
        moves.move(scheduler, last(), W1, at("13T10:25"));
        Visit moved = install(plans.latest(folder).orElseThrow(), "MS1-02");

        assertThat(pins.unpin(scheduler, folder, moved)).isTrue();
        assertThat(pins.unpin(scheduler, folder, moved)).isFalse();
        assertThat(current.load(folder).published()).isEmpty();
    }

    @Test
    void the_move_stands_in_the_history() {
        moves.move(scheduler, last(), W1, at("13T10:25"));

        assertThat(db.select(CHANGE_LOG.WHAT)
                        .from(CHANGE_LOG)
                        .where(CHANGE_LOG.PERSON_ID.eq(scheduler.id().value()))
                        .fetch(CHANGE_LOG.WHAT))
                .anySatisfy(line -> assertThat(line).contains("moved the install of MS1-02 by hand", "crew W1"));
    }

    @Test
    void rain_on_the_wall_is_refused_and_nothing_is_saved() {
        assertThat(refused("QW2-01", "13T13:00")).contains(ContractRule.RAINING);
    }

    @Test
    void what_waits_for_it_is_not_left_behind() {
        assertThat(refused("MS1-02", "14T12:30")).containsExactly(ContractRule.WRAP_COURSE);
    }

    @Test
    void a_crew_that_is_away_is_not_sent() {
        absences.add(scheduler, folder, AbsenceRequest.wholeDay(W1, LocalDate.of(2026, 4, 14), "training"));

        assertThat(refused("MS1-01", "14T08:00")).contains(ContractRule.SHIFT);
    }

    @Test
    void what_the_day_broke_of_a_plan_is_mended_one_visit_after_the_other() {
        var late = new AbsenceRequest(
                W1, LocalDate.of(2026, 4, 13), LocalTime.of(7, 0), LocalTime.of(10, 0), "a car that will not start");
        assertThat(absences.add(scheduler, folder, late)).isInstanceOf(AbsenceResult.Added.class);

        var result = (MoveResult.Moved) moves.move(scheduler, visit("MS1-01"), W1, at("13T12:20"));

        assertThat(result.verdict().mended()).isNotEmpty();
        Plan after = plans.load(result.plan());
        assertThat(after.ledger().hard())
                .isPositive()
                .isEqualTo(Audit.of(current.load(folder), ClaimedPlan.of(after), after.start())
                        .ledger()
                        .hard());
    }

    @Test
    void two_visits_at_once_are_refused() {
        assertThat(refused("MS1-02", "13T10:00")).containsExactly(ContractRule.ONE_AT_A_TIME);
    }

    @Test
    void a_move_of_a_plan_that_is_no_longer_the_newest_saves_nothing() {
        VisitSeen seen = last();
        plans.save(folder, planned());

        assertThat(unsaved(() -> moves.move(scheduler, seen, W1, at("13T10:25"))))
                .isInstanceOf(MoveResult.ChangedMeanwhile.class);
    }

    @Test
    void a_visit_of_the_published_plan_is_moved_until_another_is_published() {
        publications.publish(scheduler, folder, plan, null);
        PlanId proposal = plans.save(folder, planned());
        var seen = new VisitSeen(folder, proposal, plan, new OpeningId("MS1-02"), Task.INSTALL);
        publications.publish(
                scheduler,
                folder,
                proposal,
                publications.latest(folder).orElseThrow().id());

        assertThat(unsaved(() -> moves.move(scheduler, seen, W1, at("13T10:25"))))
                .isInstanceOf(MoveResult.ChangedMeanwhile.class);
        var now = new VisitSeen(folder, proposal, proposal, new OpeningId("MS1-02"), Task.INSTALL);
        assertThat(moves.move(scheduler, now, W1, at("13T10:25"))).isInstanceOf(MoveResult.Moved.class);
    }

    @Test
    void of_two_who_move_at_once_one_hears_of_the_other() throws Exception {
        var seen = List.of(last(), visit("MS1-01"));
        var start = new CyclicBarrier(2);
        Callable<MoveResult> one = () -> {
            start.await();
            return moves.move(scheduler, seen.getFirst(), W1, at("13T10:25"));
        };
        Callable<MoveResult> two = () -> {
            start.await();
            return moves.move(scheduler, seen.getLast(), W1, at("13T09:26"));
        };

        try (var threads = Executors.newFixedThreadPool(2)) {
            assertThat(threads.invokeAll(List.of(one, two)))
                    .extracting(Future::resultNow)
                    .hasAtLeastOneElementOfType(MoveResult.Moved.class)
                    .hasAtLeastOneElementOfType(MoveResult.ChangedMeanwhile.class);
        }
    }

    @Test
    void while_a_plan_is_being_made_nothing_is_moved() {
        VisitSeen seen = last();
        runs.request(folder, new PlanRequest(null, java.time.Duration.ofMinutes(5), null, 1));

        assertThat(moves.move(scheduler, seen, W1, at("13T10:25")))
                .isInstanceOfAny(MoveResult.Planning.class, MoveResult.ChangedMeanwhile.class);
        runs.stop(folder);
    }

    @Test
    void a_scheduler_moves_visits_of_their_own_sites_only_and_reads_of_no_other() {
        var ofMill = people.add(Role.SCHEDULER, Reach.of(Set.of(new SiteId("M"))), null);

        MoveVerdict verdict = moves.attempt(ofMill, last()).orElseThrow().at(W1, at("13T07:30"));

        assertThat(verdict.broken()).isNotEmpty();
        assertThat(verdict.broken().toString()).doesNotContain("QW1", "QW2").contains("not yours");
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> moves.attempt(ofMill, visit("QW2-01")));
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> moves.move(ofMill, visit("QW2-01"), W1, at("13T14:30")));
        var crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> moves.move(crew, last(), W1, at("13T10:25")));
    }

    @Test
    void a_start_between_two_minutes_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> moves.move(scheduler, last(), W1, at("13T10:25").plusSeconds(20)))
                .withMessageContaining("whole minute");
    }

    private List<ContractRule> refused(String opening, String start) {
        var result = (MoveResult.Refused) unsaved(() -> moves.move(scheduler, visit(opening), W1, at(start)));
        return result.verdict().broken().stream()
                .map(broken -> broken.breach().rule())
                .distinct()
                .toList();
    }

    private MoveResult unsaved(java.util.function.Supplier<MoveResult> move) {
        List<Integer> before = rows();
        MoveResult result = move.get();
        assertThat(rows()).isEqualTo(before);
        return result;
    }

    private List<Integer> rows() {
        return List.of(
                db.fetchCount(PLAN, PLAN.FOLDER_ID.eq(folder.value())),
                db.fetchCount(PIN, PIN.FOLDER_ID.eq(folder.value())),
                db.fetchCount(CHANGE_LOG, CHANGE_LOG.PERSON_ID.eq(scheduler.id().value())));
    }

    private VisitSeen last() {
        return visit("MS1-02");
    }

    private VisitSeen visit(String opening) {
        return new VisitSeen(folder, plan, plan, new OpeningId(opening), Task.INSTALL);
    }

    private static Visit install(Plan plan, String opening) {
        return plan.visits().stream()
                .filter(one -> one.opening().value().equals(opening) && one.task() == Task.INSTALL)
                .findFirst()
                .orElseThrow();
    }

    private static List<Visit> without(Plan plan, String opening) {
        return plan.visits().stream()
                .filter(one -> !one.equals(install(plan, opening)))
                .toList();
    }

    private static Plan planned() {
        return Planner.standard()
                .plan(new QuayFolder().folder(), new PlanRequest(null, null, 0L, 1), _ -> {}, () -> false);
    }

    private static Instant at(String dayAndTime) {
        return OffsetDateTime.parse("2026-04-%s:00-07:00".formatted(dayAndTime)).toInstant();
    }
}
