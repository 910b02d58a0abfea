package drylap.planning.solver;

import drylap.intake.GeneratedFolder;
import java.util.BitSet;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A generated job that is not cut into regions: decoded whole, asked for open time, and changed by a move that is taken back. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DecodeBenchmark {
    @Param({"300", "3000"})
    int openings;

    private final Random random = new Random(1);
    private CrewLists lists = new CrewLists();
    private Schedule schedule = lists.working;

    @Setup
    public void plan() {
        Problem problem =
                Problem.of(GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), 1), null);
        lists = Construction.firstLists(problem, new Meter());
        schedule = lists.schedule();
        lists.working = schedule;
    }

    @Benchmark
    public long decodeWhole() {
        return lists.schedule().tally.soft();
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public int openTime() {
        WorkTask task = lists.problem().tasks().get(random.nextInt(schedule.start.length));
        return task.open.firstFit(random.nextInt(lists.problem().horizonEnd()), task.minutes);
    }

    /** To a place in some able crew's list where the crew comes at about the time that the unit has now. */
    @Benchmark
    public long moveAndBack() {
        Unit unit = lists.getUnits().get(random.nextInt(lists.getUnits().size()));
        Route from = schedule.positions.route(unit);
        int at = schedule.positions.place(unit);
        Route to = someRoute(unit);
        int place = schedule.placeAt(to, schedule.start[unit.tasks[0].index]);
        int into = from == to ? Math.min(at, place) : place;
        MoveRun move = new MoveRun(from, at, 1, to, into);
        if (move.idle(lists) || move.closesRing(schedule.rings)) return 0;
        ListMove undo = move.opposite(lists);
        move.change(announcer, lists);
        schedule.settle();
        long soft = schedule.tally.soft();
        lists.takingBack = true;
        undo.change(announcer, lists);
        lists.takingBack = false;
        schedule.rollBack();
        return soft;
    }

    private Route someRoute(Unit unit) {
        BitSet able = unit.crews();
        int crew = -1;
        for (int skip = random.nextInt(able.cardinality()); skip >= 0; skip--) crew = able.nextSetBit(crew + 1);
        return lists.getRoutes().get(crew);
    }

    private final ListMove.Announcer announcer = new ListMove.Announcer() {
        @Override
        public void before(Route route, int from, int until) {}

        @Override
        public void after(Route route, int from, int until) {
            if (lists.takingBack) schedule.positions.refresh(route, from);
            else schedule.listChanged(route, from, until);
        }
    };
}
