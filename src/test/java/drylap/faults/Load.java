package drylap.faults;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;

/** People and programs at work, without a pause, on whichever node answers. */
final class Load implements AutoCloseable {
    private static final Duration BETWEEN = Duration.ofMillis(120);
    private static final Duration LONGEST_OPERATION = Duration.ofMinutes(5);

    private final Ground ground;
    private final List<Thread> threads = new ArrayList<>();
    private final AtomicInteger busy = new AtomicInteger();
    private volatile boolean running = true;
    private volatile boolean paused;

    Load(Ground ground) {
        this.ground = ground;
    }

    /** One thing to do. */
    @FunctionalInterface
    private interface Work {
        void once(Random draw) throws Exception;
    }

    void begin(Ordering ordering) {
        var marking = new Marking(ground);
        go("program", 1, marking::one);
        go("another-program", 2, marking::one);
        go("phone", 3, marking::batchThrice);
        go("publishers", 4, new Publishing(ground)::atOnce);
        go("imports", 5, ordering::folder);
    }

    private void go(String name, long seed, Work work) {
        Random draw = new Random(seed);
        threads.add(Thread.ofPlatform().daemon().name(name).start(() -> live(work, draw)));
    }

    private void live(Work work, Random draw) {
        try {
            while (running) {
                busy.incrementAndGet();
                try {
                    if (!paused) once(work, draw);
                } finally {
                    busy.decrementAndGet();
                }
                Thread.sleep(BETWEEN);
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private void once(Work work, Random draw) throws InterruptedException {
        try {
            work.once(draw);
        } catch (InterruptedException ended) {
            throw ended;
        } catch (Exception noAnswer) {
            ground.noAnswer(noAnswer);
        }
    }

    /** Waits until everything that was begun has been answered or given up. */
    void rest() throws InterruptedException {
        paused = true;
        long begun = System.nanoTime();
        while (busy.get() > 0 && System.nanoTime() - begun < LONGEST_OPERATION.toNanos()) Thread.sleep(20);
        if (busy.get() > 0) throw new IllegalStateException("some operations never come to an end");
    }

    void goOn() {
        paused = false;
    }

    @Override
    public void close() throws InterruptedException {
        running = false;
        ground.end();
        for (Thread thread : threads) thread.join(Duration.ofSeconds(30));
    }
}
