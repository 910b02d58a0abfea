package drylap.planning;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Task;
import drylap.planning.PlanChange.Kind;
import drylap.planning.PlanChange.Reason;
import drylap.planning.PlanChange.Why;
import drylap.sites.Opening;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** A published plan is changed in one known place; the comparison has to name that place, and the fact that moved it. */
class PlanComparisonTests {
    private static final JobFolder FOLDER = JobFixture.twoWallsOfTwoLevels();
    private static final Plan PLAN = PlanFixture.planned(FOLDER, 1_000);
    private static final Visit FIRST = PLAN.visits().stream()
            .filter(visit -> visit.task() == Task.INSTALL)
            .findFirst()
            .orElseThrow();
    private static final Visit LATER = at(FIRST, Duration.ofHours(1));

    @Test
    void a_plan_beside_itself_is_the_same_and_costs_no_more() {
        PlanComparison same = PlanComparison.of(PLAN, PLAN, FOLDER);

        assertThat(PLAN.visits()).isNotEmpty();
        assertThat(same.of(Kind.SAME)).hasSameSizeAs(PLAN.visits());
        assertThat(same.changes()).allSatisfy(change -> assertThat(change.why()).isEmpty());
        assertThat(same.ledger()).allSatisfy(term -> assertThat(term.more()).isZero());
    }

    @Test
    void a_visit_that_only_the_planner_moved_has_no_why() {
        assertThat(reasons(with(PLAN, _ -> LATER), FOLDER)).isEmpty();
    }

    @Test
    void a_moved_visit_whose_window_comes_later_says_from_when() {
        JobFolder late = openings(opening -> delivered(opening, 3));

        PlanChange moved = only(PlanComparison.of(PLAN, with(PLAN, _ -> LATER), late), Kind.MOVED);

        assertThat(moved.before()).isEqualTo(FIRST);
        assertThat(moved.after()).isEqualTo(LATER);
        assertThat(moved.why())
                .containsExactly(
                        new Why(Reason.DELIVERY, FIRST.date().plusDays(3).toString()));
    }

    @Test
    void a_moved_visit_whose_old_time_is_shut_says_so() {
        Plan shut = new Plan(
                PLAN.start(),
                PLAN.horizonEnd(),
                with(PLAN, _ -> LATER).visits(),
                List.of(),
                List.of(),
                PLAN.openHours().stream()
                        .filter(open -> open.when().from().isAfter(FIRST.start()))
                        .toList(),
                PLAN.ledger());

        assertThat(reasons(shut, FOLDER)).containsExactly(Reason.SHUT);
    }

    @Test
    void a_crew_that_is_away_moves_its_visits() {
        JobFolder away = FOLDER.withShifts(FOLDER.shifts().stream()
                .filter(shift ->
                        !shift.crew().equals(FIRST.crew()) || !shift.date().equals(FIRST.date()))
                .toList());

        assertThat(reasons(with(PLAN, _ -> LATER), away)).containsExactly(Reason.NO_SHIFT);
    }

    @Test
    void a_task_that_is_done_is_dropped_for_that() {
        JobFolder done = openings(opening -> opening.standing(opening.stepList().last(), FIRST.start(), Set.of()));

        PlanChange dropped = only(PlanComparison.of(PLAN, without(), done), Kind.DROPPED);

        assertThat(dropped.why()).containsExactly(new Why(Reason.DONE, ""));
        assertThat(dropped.opening()).isEqualTo(FIRST.opening());
    }

    @Test
    void a_task_that_only_the_proposal_has_is_added() {
        assertThat(only(PlanComparison.of(without(), PLAN, FOLDER), Kind.ADDED).after())
                .isEqualTo(FIRST);
    }

    @Test
    void a_pinned_visit_says_that_it_stays_for_its_pin() {
        JobFolder pinned = FOLDER.withPublished(List.of(new PublishedVisit(FIRST, true)));

        assertThat(PlanComparison.of(PLAN, PLAN, pinned).changes())
                .filteredOn(change -> !change.why().isEmpty())
                .singleElement()
                .satisfies(change -> {
                    assertThat(change.before()).isEqualTo(FIRST);
                    assertThat(change.why()).containsExactly(new Why(Reason.PINNED, ""));
                });
    }

    private static List<Reason> reasons(Plan proposal, JobFolder folder) {
        return only(PlanComparison.of(PLAN, proposal, folder), Kind.MOVED).why().stream()
                .map(Why::reason)
                .toList();
    }

    private static PlanChange only(PlanComparison compared, Kind kind) {
        assertThat(compared.of(kind)).hasSize(1);
        return compared.of(kind).getFirst();
    }

    private static Plan without() {
        List<Visit> visits = new ArrayList<>(PLAN.visits());
        visits.remove(FIRST);
        return visits(visits);
    }

    private static Plan with(Plan plan, UnaryOperator<Visit> change) {
        return visits(plan.visits().stream()
                .map(visit -> visit.equals(FIRST) ? change.apply(visit) : visit)
                .toList());
    }

    private static Plan visits(List<Visit> visits) {
        return new Plan(
                PLAN.start(),
                PLAN.horizonEnd(),
                visits,
                PLAN.unplanned(),
                PLAN.coverNow(),
                PLAN.openHours(),
                PLAN.ledger());
    }

    private static Visit at(Visit visit, Duration later) {
        return new Visit(
                visit.crew(),
                visit.date(),
                visit.sequence(),
                visit.facade(),
                visit.level(),
                visit.opening(),
                visit.task(),
                visit.start().plus(later),
                visit.end().plus(later));
    }

    private static JobFolder openings(UnaryOperator<Opening> change) {
        return FOLDER.withOpenings(FOLDER.openings().stream()
                .map(opening -> opening.id().equals(FIRST.opening()) ? change.apply(opening) : opening)
                .toList());
    }

    private static Opening delivered(Opening was, int days) {
        return new Opening(
                was.id(),
                was.facade(),
                was.level(),
                was.widthMm(),
                was.heightMm(),
                was.frame(),
                was.method(),
                was.approach(),
                was.secondLayer(),
                FIRST.date().plusDays(days),
                was.waterTest(),
                was.priority(),
                was.done(),
                was.doneAt(),
                was.finished());
    }
}
