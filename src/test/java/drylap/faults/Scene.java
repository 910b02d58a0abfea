package drylap.faults;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import org.awaitility.Awaitility;

/** Where faults happen, and how it is seen that all goes on. */
final class Scene {
    private static final Duration PATIENCE = Duration.ofSeconds(300);
    private static final Duration AN_HOUR = Duration.ofHours(1);
    /** By then a worker that took another for dead would have taken its run. */
    private static final Duration NOTICED_AFTER = Duration.ofSeconds(12);

    private final Cluster cluster;
    private final Book book;
    private final Setting setting;
    private final Ordering ordering;
    private final List<String> worse = new ArrayList<>();

    Scene(Ground ground, Ordering ordering) {
        cluster = ground.cluster();
        book = ground.book();
        setting = ground.setting();
        this.ordering = ordering;
    }

    /** Something that ends a node. */
    @FunctionalInterface
    interface Blow {
        void to(TrialNode node) throws Exception;
    }

    Cluster cluster() {
        return cluster;
    }

    /** Runs that did not go on from where they were kept. */
    List<String> worse() {
        return worse;
    }

    Duration web(int round, Blow blow) throws Exception {
        int node = round % Cluster.WEBS;
        long begun = System.nanoTime();
        blow.to(cluster.webs.get(node));
        cluster.webs.get(node).start();
        await(node, begun);
        return since(begun);
    }

    /** From the blow to when the other worker has gone on from where the search stood. */
    Duration worker(Blow blow) throws Exception {
        var solve = new Solve(cluster.postgres, ordering.run(setting.searched()));
        var known = solve.awaitUnderWay();
        TrialNode worker = cluster.workerOf(known.pid());
        long begun = System.nanoTime();
        try (var beside = Executors.newVirtualThreadPerTaskExecutor()) {
            var struck = beside.submit(() -> {
                blow.to(worker);
                return null;
            });
            var change = solve.awaitChange(known);
            Duration gone = since(begun);
            if (!change.next().noWorseThan(change.last())) worse.add("a run went on worse: " + change);
            struck.get();
            startAgain(worker);
            return gone;
        }
    }

    /**
     * Whoever has a run keeps it, whichever clock is wrong: the clock of the worker that has it jumps in two rounds of four, that of the other one in
     * the others, on and back in turn.
     */
    Duration clocks(int round) throws InterruptedException {
        var solve = new Solve(cluster.postgres, ordering.run(setting.searched()));
        var known = solve.awaitUnderWay();
        int at = cluster.workers.indexOf(cluster.workerOf(known.pid()));
        TrialNode worker = cluster.workers.get((at + round / 2) % cluster.workers.size());
        TrialNode web = cluster.webs.get(round % Cluster.WEBS);
        Duration by = round % 2 == 0 ? AN_HOUR : AN_HOUR.negated();
        Duration wrong = jump(by, web, worker);
        Duration right = jump(Duration.ZERO, web, worker);
        var then = solve.place();
        if (then.isEmpty() || then.get().attempt() != known.attempt())
            worse.add("a run did not stay where it was when clocks jumped: %s, then %s".formatted(known, then));
        return wrong.compareTo(right) > 0 ? wrong : right;
    }

    /** How long from the jump until all have confirmed something after it. */
    private Duration jump(Duration ahead, TrialNode... nodes) throws InterruptedException {
        for (TrialNode node : nodes) node.setClockAhead(ahead);
        Thread.sleep(WrongClock.SEEN_AFTER.plusMillis(100));
        long begun = System.nanoTime();
        Duration took = untilAllConfirm(begun);
        Thread.sleep(NOTICED_AFTER);
        return took;
    }

    private static void startAgain(TrialNode worker) throws IOException {
        worker.start();
        worker.awaitReady();
    }

    Duration untilAllConfirm(long begun) {
        for (int node = 0; node < Cluster.WEBS; node++) await(node, begun);
        return since(begun);
    }

    private void await(int node, long begun) {
        Awaitility.await()
                .atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(50))
                .until(() -> book.confirmedBy(node, begun));
    }

    private static Duration since(long begun) {
        return Duration.ofNanos(System.nanoTime() - begun);
    }
}
