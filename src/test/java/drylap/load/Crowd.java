package drylap.load;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Everybody at work, each on a thread of their own, with numbers drawn from a seed of their own. */
final class Crowd {
    private final List<Thread> threads = new ArrayList<>();
    private final List<Worker> workers;
    private volatile boolean over;

    Crowd(List<Worker> workers) {
        this.workers = workers;
    }

    /** One after another, as the door wants it. */
    void comeIn() throws InterruptedException {
        for (Worker one : workers) {
            try {
                one.comeIn();
            } catch (IOException counted) {
                // it is in the table; whoever is not in finds no page either
            }
        }
    }

    void begin() {
        for (int i = 0; i < workers.size(); i++) {
            Worker one = workers.get(i);
            Random draw = new Random(i);
            threads.add(Thread.ofVirtual().start(() -> live(one, draw)));
        }
    }

    private void live(Worker one, Random draw) {
        try {
            while (!over) {
                Thread.sleep(Think.of(draw));
                if (over) return;
                try {
                    one.act(draw);
                } catch (IOException counted) {
                    // it is in the table; they try something else
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
