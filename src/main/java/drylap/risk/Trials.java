package drylap.risk;

import drylap.climate.DrawnSky;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Replays a plan many times on all processors. Each trial has three streams of chance of its own, which never overlap: weather,
 * work and deliveries; so that neither the number of threads nor a change of one matters to the others.
 */
final class Trials {
    private static final int STREAMS = 3;

    private final JobBook book;
    private final ForkJoinPool pool;
    private final Queue<Worker> idle = new ConcurrentLinkedQueue<>();

    private record Worker(DrawnSky sky, Draws draws, Replay replay) {
        static Worker of(JobBook book) {
            DrawnSky sky = new DrawnSky(book.skies);
            Draws draws = new Draws(book);
            return new Worker(sky, draws, new Replay(book, sky, draws));
        }
    }

    Trials(JobBook book, ForkJoinPool pool) {
        this.book = book;
        this.pool = pool;
    }

    /** Nothing where it was halted. */
    Optional<Runs> run(int trials, long seed, IntConsumer progress, BooleanSupplier halted) {
        List<UniformRandomProvider> streams = streams(trials, seed);
        Runs runs = new Runs(book, trials);
        AtomicInteger done = new AtomicInteger();
        pool.submit(() -> IntStream.range(0, trials).parallel().forEach(trial -> {
                    if (halted.getAsBoolean()) return;
                    one(trial, streams, runs);
                    progress.accept(done.incrementAndGet());
                }))
                .join();
        return done.get() == trials ? Optional.of(runs) : Optional.empty();
    }

    static List<UniformRandomProvider> streams(int trials, long seed) {
        var source = (JumpableUniformRandomProvider) RandomSource.XO_SHI_RO_256_PP.create(seed);
        return source.jumps((long) STREAMS * trials).toList();
    }

    private void one(int trial, List<UniformRandomProvider> streams, Runs runs) {
        Worker worker = idle.poll();
        if (worker == null) worker = Worker.of(book);
        worker.sky.draw(streams.get(STREAMS * trial));
        worker.draws.draw(streams.get(STREAMS * trial + 1), streams.get(STREAMS * trial + 2));
        worker.replay.run();
        runs.add(trial, worker.replay, worker.sky);
        idle.add(worker);
    }
}
