package drylap.faults;

import java.io.IOException;
import java.time.Duration;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/** Folders that are brought in, whole or not at all, and runs that are asked for. */
final class Ordering {
    private static final Duration BETWEEN = Duration.ofSeconds(2);
    private static final int FEWEST_OPENINGS = 8;
    private static final int DIFFERENT_SIZES = 40;

    private final Ground ground;
    private final AtomicInteger nextFolder = new AtomicInteger();
    /** Half an hour and something, by which a run is known again in the database. */
    private final AtomicLong nextLimitMs = new AtomicLong(1_800_000);

    Ordering(Ground ground) {
        this.ground = ground;
    }

    void folder(Random draw) throws IOException, InterruptedException {
        int number = nextFolder.getAndIncrement();
        int openings = FEWEST_OPENINGS + number % DIFFERENT_SIZES;
        String name = "trial-%d".formatted(number);
        int node = Ground.some(draw);
        ground.book().ask(Names.bringIn(name, openings));
        ground.program().ask(ground.web(node), "/import?name=%s&openings=%d&seed=%d".formatted(name, openings, number));
        ground.book().confirm(Names.bringIn(name, openings), node);
        Thread.sleep(BETWEEN);
    }

    /** The run that was under way for the folder ends. */
    long run(long folder) throws InterruptedException {
        return ground.untilAnswered(0, node -> {
                    long ms = nextLimitMs.getAndIncrement();
                    String name = Names.run(folder, ms);
                    ground.book().ask(name);
                    String answer =
                            ground.program().ask(ground.web(node), "/run?folder=%d&ms=%d".formatted(folder, ms));
                    ground.book().confirm(name, node);
                    return Long.valueOf(answer);
                })
                .orElseThrow(() -> new IllegalStateException("no node takes a run"));
    }
}
