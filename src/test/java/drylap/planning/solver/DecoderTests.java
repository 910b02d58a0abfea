package drylap.planning.solver;

import static drylap.planning.JobFixture.MONDAY;
import static drylap.planning.JobFixture.ZONE;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.planning.JobFixture;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecoderTests {
    private static final PlanRequest AT_ONCE = new PlanRequest(null, null, 0L, 1);

    private static Plan plan(JobFolder folder, PlanRequest request) {
        return Planner.standard().plan(folder, request, progress -> {}, () -> false);
    }

    /** The streams know nothing of the decoder; shuffled lists are the worst that a search can hand it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void any_order_of_the_lists_decodes_to_a_legal_schedule(long seed) {
        Problem problem = Problem.of(JobFixture.job(60, seed), null);
        CrewLists lists = Construction.firstLists(problem, new Meter()).lists();
        Random random = new Random(seed);
        for (Route route : lists.getRoutes()) Collections.shuffle(route.getUnits(), random);

        assertThat(new PlanMaker(lists).plan().ledger().hard()).isZero();
    }

    /** Two wrap crews and two walls, so listed that each crew waits for the other's lower course. */
    @Test
    void crews_that_wait_for_each_other_in_a_ring_leave_one_unit_out_and_go_on() {
        Problem problem = Problem.of(JobFixture.twoWallsOfTwoLevels(), null);
        CrewLists lists = Construction.firstLists(problem, new Meter()).lists();
        List<Unit> wraps = problem.units(Task.WRAP);
        List<Unit> one = wraps.stream().filter(unit -> onWall(unit, "N")).toList();
        List<Unit> other = wraps.stream().filter(unit -> onWall(unit, "S")).toList();
        List<CrewCalendar> crews = problem.crews(Task.WRAP);
        put(lists, crews.get(0), upper(one), lower(other));
        put(lists, crews.get(1), upper(other), lower(one));

        Plan plan = new PlanMaker(lists).plan();

        assertThat(plan.ledger().hard()).isZero();
        assertThat(plan.visits()).filteredOn(visit -> visit.task() == Task.WRAP).hasSize(3);
        assertThat(plan.unplanned())
                .filteredOn(task -> task.task() == Task.WRAP)
                .hasSize(1);
    }

    private static void put(CrewLists lists, CrewCalendar crew, Unit first, Unit second) {
        lists.getRoutes().get(crew.index).setUnits(new ArrayList<>(List.of(first, second)));
    }

    private static boolean onWall(Unit unit, String wall) {
        return unit.course.course.facade().facade().equals(wall);
    }

    private static Unit lower(List<Unit> units) {
        return units.stream()
                .filter(unit -> unit.course.course.level() == 1)
                .findFirst()
                .orElseThrow();
    }

    private static Unit upper(List<Unit> units) {
        return units.stream()
                .filter(unit -> unit.course.course.level() == 2)
                .findFirst()
                .orElseThrow();
    }

    /** Half of the changes are taken back at once, as a search does with most of what it tries. */
    @Test
    void decoding_again_after_changes_equals_decoding_from_nothing() {
        Problem problem = Problem.of(JobFixture.job(90, 7), null);
        CrewLists lists = Construction.firstLists(problem, new Meter()).lists();
        FastScore score = new FastScore();
        score.resetWorkingSolution(lists);
        score.calculateScore();
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            Route route = lists.getRoutes().get(random.nextInt(lists.getRoutes().size()));
            if (route.getUnits().size() < 2) continue;
            int one = random.nextInt(route.getUnits().size());
            int other = random.nextInt(route.getUnits().size());
            int wait = random.nextInt(5) * 1440;
            int before = change(lists, score, route, one, other, wait);
            assertThat(score.calculateScore()).isEqualTo(CrewLists.scoreOf(lists.schedule().tally));
            if (random.nextBoolean()) change(lists, score, route, one, other, before);
        }
        assertThat(score.calculateScore()).isEqualTo(CrewLists.scoreOf(lists.schedule().tally));
    }

    /** Swaps two units and sets the wait of one of them; doing it again with the wait that it answers takes it back. */
    private static int change(CrewLists lists, FastScore score, Route route, int one, int other, int wait) {
        int end = route.getUnits().size();
        score.beforeListVariableChanged(route, Route.UNITS, 0, end);
        int unit = Math.max(route.getUnits().get(one).index, route.getUnits().get(other).index);
        int before = lists.notBefore[unit];
        lists.notBefore[unit] = wait;
        Collections.swap(route.getUnits(), one, other);
        score.afterListVariableChanged(route, Route.UNITS, 0, end);
        return before;
    }

    @Test
    void nothing_starts_before_the_moment_that_is_planned_from() {
        Instant now = MONDAY.plusDays(1).atTime(10, 7).atZone(ZONE).toInstant();

        Plan plan = plan(JobFixture.job(30, 3), new PlanRequest(now, null, 200L, 1));

        assertThat(plan.start()).isEqualTo(now);
        assertThat(plan.visits())
                .isNotEmpty()
                .allSatisfy(visit -> assertThat(visit.start()).isAfterOrEqualTo(now));
    }

    @Test
    void pinned_visits_stay_and_everything_else_is_planned_around_them() {
        JobFolder folder = JobFixture.job(30, 5);
        List<Visit> before = plan(folder, AT_ONCE).visits();
        List<PublishedVisit> published = before.stream()
                .map(visit -> new PublishedVisit(visit, visit.opening().value().endsWith("3")))
                .toList();

        Plan plan = plan(folder.withPublished(published), new PlanRequest(null, null, 2000L, 9));

        assertThat(plan.ledger().hard()).isZero();
        List<Object> pinned = published.stream()
                .filter(PublishedVisit::pinned)
                .map(visit -> where(visit.visit()))
                .toList();
        assertThat(pinned).isNotEmpty();
        assertThat(plan.visits().stream().map(DecoderTests::where)).containsAll(pinned);
    }

    @Test
    void pinned_visits_from_before_the_moment_that_is_planned_from_stay() {
        JobFolder folder = JobFixture.job(30, 5);
        Instant now = MONDAY.plusDays(2).atTime(9, 0).atZone(ZONE).toInstant();
        List<PublishedVisit> published = plan(folder, AT_ONCE).visits().stream()
                .map(visit -> new PublishedVisit(visit, visit.start().isBefore(now)))
                .toList();

        Plan plan = plan(folder.withPublished(published), new PlanRequest(now, null, 200L, 9));

        assertThat(plan.ledger().hard()).isZero();
        assertThat(plan.visits())
                .filteredOn(visit -> visit.start().isBefore(now))
                .isNotEmpty();
    }

    private static Object where(Visit visit) {
        return List.of(visit.crew(), visit.opening(), visit.task(), visit.start(), visit.end());
    }

    @Test
    void the_same_seed_and_moves_give_the_same_plan() {
        JobFolder folder = JobFixture.job(60, 11);
        PlanRequest request = new PlanRequest(null, null, 3000L, 4);

        assertThat(plan(folder, request)).isEqualTo(plan(folder, request));
    }

    @Test
    void a_stopped_search_answers_with_the_best_plan_so_far() {
        JobFolder folder = JobFixture.job(60, 2);

        Plan plan = Planner.standard()
                .plan(folder, new PlanRequest(null, Duration.ofHours(1), null, 1), progress -> {}, () -> true);

        assertThat(plan.visits()).isNotEmpty();
        assertThat(plan.ledger().hard()).isZero();
    }

    @Test
    void a_folder_without_forecasts_is_planned_by_daylight_alone() {
        JobFolder folder = JobFixture.withoutForecast(JobFixture.job(20, 2));

        Plan plan = plan(folder, AT_ONCE);

        assertThat(plan.unplanned()).isEmpty();
        assertThat(folder.rules().everywhere()).isEqualTo(Rules.STANDARD);
    }
}
