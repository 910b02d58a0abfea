package drylap.planning;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.PlanChange.Kind;
import drylap.planning.PlanChange.Reason;
import drylap.planning.PlanChange.Why;
import drylap.sites.Facade;
import drylap.sites.Opening;
import drylap.speech.Part;
import drylap.speech.Saying;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
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
                .containsExactly(new Why(
                        Reason.DELIVERY,
                        Saying.asItIs(new Part.When(FIRST.date().plusDays(3)))));
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
    void rain_that_shuts_the_old_time_is_named_with_the_wall_and_the_hour_it_begins() {
        Instant hour = FIRST.start().truncatedTo(ChronoUnit.HOURS);
        JobFolder wet = wet(hour);

        assertThat(shut(wet, hour))
                .isEqualTo("%s on the %s wall from %s"
                        .formatted("rain", FIRST.facade().facade(), clock(hour)));
    }

    @Test
    void a_wall_that_dries_after_rain_says_since_when() {
        Instant hour = FIRST.start().truncatedTo(ChronoUnit.HOURS).minus(Duration.ofHours(2));

        assertThat(shut(wet(hour), hour))
                .isEqualTo("drying after rain on the %s wall from %s"
                        .formatted(FIRST.facade().facade(), clock(hour.plus(Duration.ofHours(1)))));
    }

    @Test
    void a_crew_that_is_away_moves_its_visits() {
        JobFolder away = FOLDER.withShifts(FOLDER.shifts().stream()
                .filter(shift ->
                        !shift.crew().equals(FIRST.crew()) || !shift.date().equals(FIRST.date()))
                .toList());

        assertThat(only(PlanComparison.of(PLAN, with(PLAN, _ -> LATER), away), Kind.MOVED)
                        .why())
                .containsExactly(new Why(
                        Reason.NO_SHIFT,
                        Saying.of("crew {0} does not come on {1}", FIRST.crew(), new Part.When(FIRST.date()))));
    }

    @Test
    void a_task_that_is_done_is_dropped_for_that() {
        JobFolder done = openings(opening -> opening.standing(opening.stepList().last(), FIRST.start(), Set.of()));

        PlanChange dropped = only(PlanComparison.of(PLAN, without(), done), Kind.DROPPED);

        assertThat(dropped.why()).containsExactly(new Why(Reason.DONE));
        assertThat(dropped.opening()).isEqualTo(FIRST.opening());
    }

    @Test
    void a_task_that_only_the_proposal_has_is_added() {
        PlanChange added = only(PlanComparison.of(without(), PLAN, FOLDER), Kind.ADDED);

        assertThat(added.after()).isEqualTo(FIRST);
        assertThat(added.why()).containsExactly(new Why(Reason.RETURNED));
    }

    @Test
    void a_task_that_had_been_left_out_and_has_a_place_now_says_so() {
        var left = new UnplannedTask(FIRST.opening(), FIRST.task(), UnplannedReason.HORIZON_FULL, "");
        Plan without = without();
        Plan published = new Plan(
                without.start(),
                without.horizonEnd(),
                without.visits(),
                List.of(left),
                List.of(),
                without.openHours(),
                without.ledger());

        assertThat(only(PlanComparison.of(published, PLAN, FOLDER), Kind.ADDED).why())
                .containsExactly(new Why(Reason.PLACED));
    }

    @Test
    void work_behind_one_that_ends_later_follows_it() {
        Visit wrap = of(Task.WRAP);
        Duration past = Duration.between(FIRST.end(), wrap.start()).plusMinutes(1);
        Plan proposal = visits(PLAN.visits().stream()
                .map(visit -> visit.equals(FIRST) ? at(visit, past) : visit)
                .map(visit -> visit.equals(wrap) ? at(visit, past) : visit)
                .toList());

        assertThat(moved(proposal, wrap).why()).containsExactly(new Why(Reason.FOLLOWS, TaskWords.noun(Task.INSTALL)));
    }

    @Test
    void the_other_work_of_a_returned_opening_moves_for_that() {
        Visit wrap = of(Task.WRAP);
        Plan proposal = visits(PLAN.visits().stream()
                .map(visit -> visit.equals(wrap) ? at(visit, Duration.ofHours(1)) : visit)
                .toList());

        PlanChange moved = PlanComparison.of(without(), proposal, FOLDER).of(Kind.MOVED).stream()
                .filter(change -> wrap.equals(change.before()))
                .findFirst()
                .orElseThrow();
        assertThat(moved.why()).containsExactly(new Why(Reason.RETURNED));
    }

    @Test
    void a_visit_in_whose_place_the_crew_does_something_else_makes_room() {
        Visit other = PLAN.visits().stream()
                .filter(visit -> visit.crew().equals(FIRST.crew()) && !visit.equals(FIRST))
                .findFirst()
                .orElseThrow();
        Plan proposal = visits(PLAN.visits().stream()
                .map(visit -> visit.equals(FIRST) ? LATER : visit)
                .map(visit -> visit.equals(other) ? at(other, Duration.between(other.start(), FIRST.start())) : visit)
                .toList());

        assertThat(moved(proposal, FIRST).why())
                .containsExactly(new Why(Reason.ROOM, TaskWords.at(Task.INSTALL, other.opening())));
    }

    @Test
    void a_pinned_visit_says_that_it_stays_for_its_pin() {
        JobFolder pinned = FOLDER.withPublished(List.of(new PublishedVisit(FIRST, true)));

        assertThat(PlanComparison.of(PLAN, PLAN, pinned).changes())
                .filteredOn(change -> !change.why().isEmpty())
                .singleElement()
                .satisfies(change -> {
                    assertThat(change.before()).isEqualTo(FIRST);
                    assertThat(change.why()).containsExactly(new Why(Reason.PINNED));
                });
    }

    private static Visit of(Task task) {
        return PLAN.visits().stream()
                .filter(visit -> visit.task() == task && visit.opening().equals(FIRST.opening()))
                .findFirst()
                .orElseThrow();
    }

    private static PlanChange moved(Plan proposal, Visit before) {
        return PlanComparison.of(PLAN, proposal, FOLDER).of(Kind.MOVED).stream()
                .filter(change -> before.equals(change.before()))
                .findFirst()
                .orElseThrow();
    }

    /** Rain for certain in one hour, blown onto the first visit's wall; dry all day otherwise. */
    private static JobFolder wet(Instant rain) {
        Facade facade = FOLDER.facades().stream()
                .filter(one -> one.id().equals(FIRST.facade()))
                .findFirst()
                .orElseThrow();
        List<ForecastHour> hours = new ArrayList<>();
        for (int i = -6; i < 18; i++) {
            Instant hour = rain.plus(Duration.ofHours(i));
            boolean wet = i == 0;
            hours.add(new ForecastHour(hour, wet ? 5 : 0, wet ? 1 : 0, 8, 9, facade.azimuthDeg(), 15, 60));
        }
        return FOLDER.withForecasts(List.of(new Forecast(FIRST.facade().site(), hours)));
    }

    /** Why the first visit's old time is shut, where the wall is open until the hour and shut from then on. */
    private static String shut(JobFolder folder, Instant hour) {
        var before = new OpenWindow(FIRST.facade(), FIRST.task(), new TimeWindow(hour.minusSeconds(60), hour));
        Plan moved = with(PLAN, _ -> LATER);
        Plan proposal = new Plan(
                moved.start(),
                moved.horizonEnd(),
                moved.visits(),
                List.of(),
                List.of(),
                List.of(before),
                moved.ledger());
        Why why = only(PlanComparison.of(PLAN, proposal, folder), Kind.MOVED)
                .why()
                .getFirst();
        assertThat(why.reason()).isEqualTo(Reason.SHUT);
        return why.words();
    }

    private static String clock(Instant at) {
        return DateTimeFormatter.ofPattern("HH:mm")
                .format(at.atZone(FOLDER.sites().getFirst().zone()));
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
