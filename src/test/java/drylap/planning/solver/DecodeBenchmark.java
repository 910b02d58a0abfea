package drylap.planning.solver;

import drylap.intake.GeneratedFolder;
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

/** A generated job that is not cut into regions: decoded whole, asked for open time, and changed by moves that are taken back. */
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

    @Setup
    public void plan() {
        Problem problem = Problem.of(GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), 1), null);
        lists = Construction.drierLists(Construction.firstLists(problem, new Meter()), () -> false)
                .lists();
        lists.working = lists.schedule();
    }

    @Benchmark
    public long decodeWhole() {
        return lists.schedule().tally.soft();
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public int openTime() {
        WorkTask task = lists.problem().tasks().get(random.nextInt(lists.working.start.length));
        return task.open.firstFit(random.nextInt(lists.problem().horizonEnd()), task.minutes);
    }

    /** As the search draws it, what it finds out about rebuilding included. */
    @Benchmark
    public long moveAndBack() {
        Trial trial = new Trial(lists);
        return trial.of(new MoveMaker.Draw(lists, random).next()) ? trial.soft : 0;
    }
}
