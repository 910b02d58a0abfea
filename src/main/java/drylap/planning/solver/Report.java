package drylap.planning.solver;

import drylap.planning.PlanProgress;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;

/** Tells a watcher how far the searches of all regions have come. */
final class Report {
    private static final Duration PAUSE = Duration.ofMillis(200);

    private final long began;
    private final Consumer<PlanProgress> watcher;
    private final List<RegionSearch> searches;

    Report(long began, Consumer<PlanProgress> watcher, List<RegionSearch> searches) {
        this.began = began;
        this.watcher = watcher;
        this.searches = searches;
    }

    Duration elapsed() {
        return Duration.ofNanos(System.nanoTime() - began);
    }

    synchronized void tell() {
        watcher.accept(new PlanProgress(
                elapsed(),
                sum(RegionSearch::moves),
                sum(RegionSearch::medium),
                sum(RegionSearch::soft),
                (int) sum(RegionSearch::planned),
                (int) sum(RegionSearch::unplanned)));
    }

    private long sum(ToLongFunction<RegionSearch> number) {
        return searches.stream().mapToLong(number).sum();
    }

    /** Tells a few times a second until the thread is interrupted. */
    void tellFromTimeToTime() {
        try {
            while (true) {
                Thread.sleep(PAUSE);
                tell();
            }
        } catch (InterruptedException searchesEnded) {
            Thread.currentThread().interrupt();
        }
    }
}
