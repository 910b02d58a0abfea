package drylap.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.awaitility.Awaitility;

/**
 * How much is planned when many ask at once, by one web node and one worker and by two of each, on the same machine and for the same jobs. Ends
 * with 1 where a run failed.
 */
public final class NodesTrial {
    private static final int OPENINGS = 300;
    private static final List<Integer> NODES = List.of(1, 2);
    private static final Duration PATIENCE = Duration.ofSeconds(240);
    private static final String ACCEPTED = "accepted: --runs N and --seconds N, whole numbers from 1 to 999";

    private final int runs;
    private final Duration each;

    private NodesTrial(int runs, int seconds) {
        this.runs = runs;
        each = Duration.ofSeconds(seconds);
    }

    /**
     * What came of all runs of one layout.
     *
     * @param seconds from the first being asked for until the last had ended
     * @param waited seconds that a run waited for its turn, mean
     * @param soft cost of a plan, mean
     */
    private record Sum(int done, double seconds, double waited, double moves, double soft) {}

    public static void main(String[] args) throws Exception {
        try {
            System.exit(of(args).run() ? 0 : 1);
        } catch (IllegalArgumentException wrong) {
            System.err.println(wrong.getMessage());
            System.exit(2);
        }
    }

    private static NodesTrial of(String... words) {
        int runs = 8;
        int seconds = 20;
        for (int i = 0; i < words.length; i += 2) {
            String value = i + 1 < words.length ? words[i + 1] : "";
            if (!value.matches("[1-9]\\d{0,2}"))
                throw new IllegalArgumentException("%s: %s; %s".formatted(words[i], value, ACCEPTED));
            switch (words[i]) {
                case "--runs" -> runs = Integer.parseInt(value);
                case "--seconds" -> seconds = Integer.parseInt(value);
                default -> throw new IllegalArgumentException("%s is not known; %s".formatted(words[i], ACCEPTED));
            }
        }
        return new NodesTrial(runs, seconds);
    }

    private boolean run() throws Exception {
        System.out.println(
                "| Web nodes | Workers | Runs | Done | All done after, s | Waited, s | Moves/s | Mean soft cost |");
        System.out.println("|---:|---:|---:|---:|---:|---:|---:|---:|");
        boolean all = true;
        for (int nodes : NODES) {
            Sum sum = measure(nodes);
            System.out.printf(
                    "| %d | %d | %d | %d | %.1f | %.1f | %,.0f | %,.0f |%n",
                    nodes,
                    nodes,
                    runs,
                    sum.done(),
                    sum.seconds(),
                    sum.waited(),
                    sum.moves() / sum.seconds(),
                    sum.soft());
            all &= sum.done() == runs;
        }
        return all;
    }

    private Sum measure(int nodes) throws Exception {
        Path home = Files.createTempDirectory("drylap-nodes");
        System.err.println("Consoles are in " + home);
        var stop = new Thread(() -> Cluster.endAll(home));
        Runtime.getRuntime().addShutdownHook(stop);
        try (Cluster cluster = Cluster.start(home, new Cluster.Layout(nodes, nodes, TrialNode.LASTING, List.of()))) {
            Program program = new Program();
            Setting.begin(program, cluster.webs.getFirst());
            List<Long> folders = bringIn(program, cluster);
            // every thread of every worker has planned once before it counts
            awaitEnds(cluster, ask(program, cluster, folders.subList(runs, folders.size())));
            List<Long> asked = ask(program, cluster, folders.subList(0, runs));
            awaitEnds(cluster, asked);
            return sum(cluster, asked);
        } finally {
            Runtime.getRuntime().removeShutdownHook(stop);
        }
    }

    /** The same jobs whatever the layout, and some to warm up with. */
    private List<Long> bringIn(Program program, Cluster cluster) throws IOException, InterruptedException {
        List<Long> folders = new ArrayList<>();
        for (int number : IntStream.range(0, runs + 2 * NODES.getLast()).toArray())
            folders.add(Long.valueOf(program.ask(
                    cluster.webs.getFirst(),
                    "/import?name=job-%d&openings=%d&seed=%d".formatted(number, OPENINGS, number))));
        return folders;
    }

    private List<Long> ask(Program program, Cluster cluster, List<Long> folders)
            throws IOException, InterruptedException {
        List<Long> asked = new ArrayList<>();
        for (long folder : folders) {
            TrialNode web = cluster.webs.get(asked.size() % cluster.webs.size());
            asked.add(Long.valueOf(program.ask(web, "/run?folder=%d&ms=%d".formatted(folder, each.toMillis()))));
        }
        return asked;
    }

    private void awaitEnds(Cluster cluster, List<Long> asked) {
        Awaitility.await()
                .atMost(each.multipliedBy(asked.size()).plus(PATIENCE))
                .pollInterval(Duration.ofMillis(200))
                .until(() ->
                        number(cluster, "select count(*) from job where ended_at is null and id in " + in(asked)) == 0);
    }

    private Sum sum(Cluster cluster, List<Long> asked) throws SQLException {
        try (Connection database = cluster.postgres.connection();
                var statement = database.createStatement();
                var row = statement.executeQuery("""
                        select count(*) filter (where j.state = 'done'),
                               extract(epoch from max(j.ended_at) - min(j.asked_at)),
                               avg(extract(epoch from j.started_at - j.asked_at)), sum(r.moves), avg(r.soft)
                        from job j join planning_run r on r.job_id = j.id where j.id in""" + in(asked))) {
            row.next();
            return new Sum(row.getInt(1), row.getDouble(2), row.getDouble(3), row.getDouble(4), row.getDouble(5));
        }
    }

    private static long number(Cluster cluster, String question) throws SQLException {
        try (Connection database = cluster.postgres.connection();
                var statement = database.createStatement();
                var row = statement.executeQuery(question)) {
            row.next();
            return row.getLong(1);
        }
    }

    private static String in(List<Long> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", ", " (", ")"));
    }
}
