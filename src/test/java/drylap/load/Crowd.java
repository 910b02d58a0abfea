package drylap.load;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;

/** Everybody at work, each on a thread of their own, with numbers drawn from a seed of their own. */
final class Crowd {
    private static final int AT_A_TIME = 4;
    private final List<Thread> threads = new ArrayList<>();
    private final List<Worker> workers;
    private final Counts counts;
    private volatile boolean over;

    Crowd(List<Worker> workers, Counts counts) {
        this.workers = workers;
        this.counts = counts;
    }

    /** A few at a time: of many at once from one address the door makes some wait. */
    void comeIn() throws InterruptedException {
        try (var door = Executors.newFixedThreadPool(AT_A_TIME)) {
            door.invokeAll(workers.stream().map(this::coming).toList());
        }
    }

    private Callable<Worker> coming(Worker one) {
        return () -> {
            try {
                one.comeIn();
            } catch (IOException counted) {
                // it is in the table; whoever is not in finds no page either
            } catch (RuntimeException odd) {
                counts.failed(Kind.OTHER, String.valueOf(odd));
            }
            return one;
        };
    }

    void begin() {
        for (int i = 0; i < workers.size(); i++) {
            Worker one = workers.get(i);
            // small seeds of Random begin alike
            Random draw = new Random(new SplittableRandom(i).nextLong());
            threads.add(Thread.ofVirtual().start(() -> live(one, draw)));
        }
    }

    private void live(Worker one, Random draw) {
        try {
            while (!over) {
                Thread.sleep(one.pause(draw));
                if (over) return;
                try {
                    one.act(draw);
                } catch (IOException counted) {
                    // it is in the table; they try something else
                } catch (RuntimeException odd) {
                    counts.failed(Kind.OTHER, String.valueOf(odd));
                }
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    void end() throws InterruptedException {
        over = true;
        for (Thread thread : threads) thread.interrupt();
        for (Thread thread : threads) thread.join();
        for (Worker one : workers) {
            try {
                one.leave();
            } catch (IOException gone) {
                // it leaves all the same
            }
        }
    }
}
