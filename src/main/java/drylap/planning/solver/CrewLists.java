package drylap.planning.solver;

import drylap.kernel.CrewId;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.constraintweight.ConstraintConfigurationProvider;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.solution.cloner.SolutionCloner;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/**
 * What the search changes: who does which units in which order, and for each unit the moment before which it waits. The
 * waiting is a second gene because the decoder starts everything as early as it can, and a crew-day is sometimes saved by
 * not starting yet.
 */
@NullUnmarked
@PlanningSolution(solutionCloner = CrewLists.Cloner.class)
public class CrewLists {
    private Problem problem;
    private List<Unit> units;
    private List<Route> routes;
    /** By unit; minute 0 and before: no waiting. Changed only together with an announced change of the unit's route. */
    int[] notBefore;
    /** Set by the score calculator that works on this solution. */
    Schedule working;
    /** While a move is taken back right after it was scored: the schedule then goes back as a whole. */
    boolean takingBack;

    /** Whether nobody but the schedule wants to know of changes: where nothing is asserted, telling OptaPlanner costs more than many a decision. */
    boolean unobserved;

    /** Tells the schedule alone. */
    final ListMove.Announcer toSchedule = new ListMove.Announcer() {
        @Override
        public void before(Route route, int from, int until) {}

        @Override
        public void after(Route route, int from, int until) {
            listChanged(route, from, until);
        }
    };

    Meter meter;
    Focus focus;
    /** Whether these lists began as a plan that people have, which is not to be made anew. */
    boolean fromPublished;
    /** Whether a search of these lists has few moves for each unit: it then draws what is likely to pay. */
    boolean hasty;

    @PlanningScore
    private HardMediumSoftLongScore score;

    /** For the solver only. */
    public CrewLists() {}

    CrewLists(Problem problem, List<Route> routes, int[] notBefore, Meter meter) {
        this.problem = problem;
        this.units = problem.units();
        this.focus = Focus.everything(units);
        this.routes = routes;
        this.notBefore = notBefore;
        this.meter = meter;
    }

    Problem problem() {
        return problem;
    }

    @ProblemFactCollectionProperty
    public List<Unit> getUnits() {
        return units;
    }

    /** OptaPlanner judges no lists without a value; where all that is left is pinned, it gets one that nobody is given. */
    @ValueRangeProvider(id = "units")
    public List<Unit> getValues() {
        if (!units.isEmpty() || problem.tasks().isEmpty()) return units;
        return List.of(new Unit(0, List.of(problem.tasks().getFirst()), new BitSet()));
    }

    @PlanningEntityCollectionProperty
    public List<Route> getRoutes() {
        return routes;
    }

    @ConstraintConfigurationProvider
    public PlanWeights getWeights() {
        return PlanWeights.of(problem);
    }

    /** The stops that these lists decode to, for the constraint streams. */
    @ProblemFactCollectionProperty
    public List<Stop> getStops() {
        return Stops.of(schedule());
    }

    public HardMediumSoftLongScore getScore() {
        return score;
    }

    public void setScore(HardMediumSoftLongScore score) {
        this.score = score;
    }

    /** Tells the working schedule which places of a route have changed; taken back, they are as the schedule knew them. */
    void listChanged(Route route, int from, int until) {
        if (takingBack) working.positions.refresh(route, from, until);
        else working.listChanged(route, from, until);
    }

    /** Takes a move back that was just settled, and the schedule with it. */
    void takeBack(ListMove undo) {
        takeBack(undo, toSchedule);
    }

    void takeBack(ListMove undo, ListMove.Announcer announcer) {
        takingBack = true;
        undo.change(announcer, this);
        takingBack = false;
        working.rollBack();
    }

    /** Decodes the lists from nothing. */
    Schedule schedule() {
        Schedule schedule = new Schedule(problem);
        schedule.bind(routes, notBefore);
        schedule.settle();
        return schedule;
    }

    /**
     * The same lists over the same work with more crews or shifts, or without idle ones. A crew that gains days does
     * at first what it did. Null where the work is cut into other units there, or a crew with work is missing.
     */
    @Nullable
    CrewLists over(Problem other) {
        if (!sameWork(other.units())) return null;
        Map<CrewId, Route> byCrew = routes.stream()
                .collect(Collectors.toMap(route -> route.crew().crew.id(), Function.identity()));
        int[] waits = notBefore.clone();
        Schedule schedule = schedule();
        List<Route> moved = new ArrayList<>();
        for (CrewCalendar crew : other.crews()) {
            Route route = byCrew.remove(crew.crew.id());
            List<Unit> list = route == null ? List.of() : route.getUnits();
            if (route != null && route.crew().days() < crew.days())
                for (Unit unit : list) waits[unit.index] = Math.max(waits[unit.index], asNow(unit, schedule));
            List<Unit> theirs =
                    list.stream().map(unit -> other.units().get(unit.index)).toList();
            moved.add(new Route(crew, new ArrayList<>(theirs)));
        }
        boolean lost =
                byCrew.values().stream().anyMatch(route -> !route.getUnits().isEmpty());
        return lost ? null : new CrewLists(other, moved, waits, meter);
    }

    private boolean sameWork(List<Unit> theirs) {
        return theirs.size() == units.size() && units.stream().allMatch(unit -> unit.sameWork(theirs.get(unit.index)));
    }

    /** What is out stays out until the search lets it in: coming late, it would hold up whoever waits for it. */
    private int asNow(Unit unit, Schedule schedule) {
        int start = schedule.start[unit.tasks[0].index];
        return start == TimeAxis.NEVER ? problem.horizonEnd() : start;
    }

    /** Copies what the search changes; units and the problem are shared. */
    public static class Cloner implements SolutionCloner<CrewLists> {
        @Override
        public CrewLists cloneSolution(CrewLists original) {
            List<Route> routes = new ArrayList<>(original.routes.size());
            for (Route route : original.routes) routes.add(new Route(route.crew(), new ArrayList<>(route.getUnits())));
            CrewLists clone = new CrewLists(original.problem, routes, original.notBefore.clone(), original.meter);
            clone.score = original.score;
            clone.focus = original.focus;
            clone.fromPublished = original.fromPublished;
            clone.hasty = original.hasty;
            return clone;
        }
    }

    static HardMediumSoftLongScore scoreOf(Tally tally) {
        return HardMediumSoftLongScore.of(0, -tally.medium(), -tally.soft());
    }
}
