package drylap.bench;

import drylap.kernel.OpeningId;
import drylap.raincall.Intake;
import drylap.raincall.OpenToRain;
import drylap.raincall.RainCall;
import drylap.raincall.Walks;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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

/** A rain call for 12 openings, the most that are solved exactly, on three walls of two levels; and for 30, searched. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RainCallBenchmark {
    private static final int DAY = 1440;

    @Param({"12", "30"})
    int openings;

    /** Now, when every order counts, and in an hour, when half can be done dry. */
    @Param({"0", "60"})
    int rainFrom;

    private List<OpenToRain> open = List.of();
    private Walks walks = Walks.none(0);

    @Setup
    public void openUp() {
        var random = new Random(1);
        open = IntStream.range(0, openings).mapToObj(i -> opening(i, random)).toList();
        walks = Walks.of(
                new int[openings],
                IntStream.range(0, openings)
                        .mapToObj(from -> IntStream.range(0, openings)
                                .map(to -> minutes(from, to))
                                .toArray())
                        .toArray(int[][]::new));
    }

    @Benchmark
    public RainCall.Order order() {
        return RainCall.order(open, walks);
    }

    private OpenToRain opening(int number, Random random) {
        double litresAMinute = 0.01 + 0.2 * random.nextDouble();
        return new OpenToRain(
                new OpeningId("W" + number),
                10 + random.nextInt(70),
                rainFrom,
                5 + random.nextInt(10),
                random.nextBoolean() ? 0 : 100,
                Intake.steady(rainFrom, DAY, litresAMinute));
    }

    private static int minutes(int from, int to) {
        if (from % 3 != to % 3) return 10;
        return from % 6 == to % 6 ? 0 : 5;
    }
}
