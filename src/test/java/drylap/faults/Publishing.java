package drylap.faults;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/** Two people who publish at once, on two nodes, in the place of the same publication: it may be given to one only. */
final class Publishing {
    private static final Duration BETWEEN = Duration.ofSeconds(1);

    private final Ground ground;

    Publishing(Ground ground) {
        this.ground = ground;
    }

    void atOnce(Random draw) throws Exception {
        Long seen = ground.setting().seen();
        var together = new CountDownLatch(Cluster.WEBS);
        try (var both = Executors.newVirtualThreadPerTaskExecutor()) {
            List<Future<?>> sent = new ArrayList<>();
            for (int node = 0; node < Cluster.WEBS; node++) {
                int at = node;
                sent.add(both.submit(() -> {
                    together.countDown();
                    together.await();
                    return publish(at, seen);
                }));
            }
            for (Future<?> one : sent) one.get();
        }
        Thread.sleep(BETWEEN);
    }

    /** Each has a plan of their own, so that two who were both told that theirs is published are one too many in the database. */
    private boolean publish(int node, @Nullable Long seen) throws InterruptedException {
        long folder = ground.setting().planned();
        long plan = ground.setting().plan(node);
        String name = Names.publish(folder, seen, plan);
        ground.book().ask(name);
        ground.book().ask(Names.takePlace(folder, seen));
        try {
            String answer = ground.program()
                    .ask(ground.web(node), "/publish?folder=%d&plan=%d&seen=%s".formatted(folder, plan, seen));
            Long newer = Program.numberAfter("meanwhile ", answer);
            if (newer != null) ground.setting().saw(newer);
            Long mine = Program.numberAfter("published ", answer);
            if (mine == null) return false;
            ground.setting().saw(mine);
            ground.book().confirm(name, node);
            ground.book().confirm(Names.takePlace(folder, seen), node);
            return true;
        } catch (IOException noAnswer) {
            ground.noAnswer(noAnswer);
            return false;
        }
    }
}
