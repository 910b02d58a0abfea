package drylap.planning.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/** Does the same for many, as many at a time as it is given processors; results come in the order of what they are of. */
final class Crowd implements AutoCloseable {
    private final ExecutorService threads;
    private final int width;

    private Crowd(int width) {
        this.width = width;
        threads = Executors.newFixedThreadPool(
                width, Thread.ofPlatform().daemon().name("plan-", 1).factory());
    }

    static Crowd of(int members, int processors) {
        return new Crowd(Math.clamp(members, 1, Math.max(1, processors)));
    }

    int width() {
        return width;
    }

    <T, R> List<R> each(List<T> all, Function<T, R> work) {
        if (all.size() == 1) return List.of(work.apply(all.getFirst())); // a small job needs no other thread
        List<Future<R>> futures = new ArrayList<>();
        for (T one : all) futures.add(threads.submit(() -> work.apply(one)));
        List<R> results = new ArrayList<>();
        for (Future<R> future : futures) results.add(result(future));
        return results;
    }

    private static <R> R result(Future<R> future) {
        try {
            return future.get();
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) throw cause;
            throw new IllegalStateException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while planning", stopped);
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
