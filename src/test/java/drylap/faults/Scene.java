package drylap.faults;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.awaitility.Awaitility;

/** Where faults happen, and how it is seen that all goes on. */
final class Scene {
    private static final Duration PATIENCE = Duration.ofSeconds(300);

    private final Cluster cluster;
    private final Book book;
    private final Load load;
    private final Setting setting;
    private final List<String> worse = new ArrayList<>();

    Scene(Cluster cluster, Book book, Load load, Setting setting) {
        this.cluster = cluster;
        this.book = book;
        this.load = load;
        this.setting = setting;
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
        var solve = new Solve(cluster.postgres, load.askRun(setting.searched()));
        TrialNode worker = cluster.workerOf(solve.awaitUnderWay().pid());
        long begun = System.nanoTime();
        blow.to(worker);
        var kept = solve.place().orElse(null);
        var last = kept == null || kept.pid() != worker.pid() ? solve.awaitUnderWay() : kept;
        if (last.pid() != worker.pid()) throw new IllegalStateException("the run went on before it was looked at");
        var next = solve.awaitGoneOn(last);
        Duration gone = since(begun);
        if (!next.noWorseThan(last)) worse.add("a run went on from %s with %s".formatted(last, next));
        worker.start();
        worker.awaitReady();
        return gone;
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
