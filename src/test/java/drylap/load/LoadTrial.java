package drylap.load;

import drylap.faults.TrialNode;
import drylap.faults.TrialPostgres;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/**
 * Many people at work on one node, with a PostgreSQL of its own, in processes of their own. Prints what each kind of request took, how soon an open
 * page was told, and what lived in the node's heap. Ends with 1 where anything went wrong; what the trade refuses is counted apart.
 */
public final class LoadTrial {
    private static final List<String> JVM = List.of("-Xmx2g");
    private static final Duration PREPARED_WITHIN = Duration.ofMinutes(15);

    private final LoadWish wish;
    private final Counts counts = new Counts();
    private final Pushes pushes = new Pushes();
    private final List<String> heap = new ArrayList<>();

    private LoadTrial(LoadWish wish) {
        this.wish = wish;
    }

    public static void main(String[] args) throws Exception {
        try {
            System.exit(new LoadTrial(LoadWish.of(args)).run() ? 0 : 1);
        } catch (IllegalArgumentException wrong) {
            System.err.println(wrong.getMessage());
            System.exit(2);
        }
    }

    private boolean run() throws Exception {
        Path home = Files.createTempDirectory("drylap-load");
        System.err.println("Consoles are in " + home);
        Runtime.getRuntime().addShutdownHook(new Thread(LoadTrial::endAll));
        var postgres = TrialPostgres.in(home, home.resolve("data"), List.of());
        postgres.awaitReady();
        String database = "jdbc:postgresql://127.0.0.1:%d/postgres".formatted(postgres.port());
        var kind = new TrialNode.Kind(List.of(LoadNode.class.getName()), JVM, 2, true);
        var node = new TrialNode(kind, "node", home, database);
        node.awaitReady();
        try (var http = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .connectTimeout(Duration.ofSeconds(10))
                .build()) {
            work(node, http);
        }
        return told();
    }

    private void work(TrialNode node, HttpClient http) throws IOException, InterruptedException {
        JsonNode told = prepared(node, http);
        note("before anybody came", node);
        Crowd crowd = new Crowd(people(Ground.of(http, node.at("/"), told, counts), told), counts);
        crowd.comeIn();
        note("once all had come", node);
        crowd.begin();
        Thread.sleep(wish.time().dividedBy(2));
        note("in the middle", node);
        Thread.sleep(wish.time().dividedBy(2));
        note("at the end", node);
        crowd.end();
        note("once all had left their pages", node);
    }

    private JsonNode prepared(TrialNode node, HttpClient http) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(node.door("/begin?openings=%d&schedulers=%d&crews=%d&followOn=%d"
                        .formatted(wish.openings(), wish.schedulers() + 1, wish.crews() + 1, wish.followOn())))
                .timeout(PREPARED_WITHIN)
                .build();
        var answer = http.send(request, HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) throw new IOException("preparing is answered with " + answer.statusCode());
        return Browser.JSON.readTree(answer.body());
    }

    private List<Worker> people(Ground ground, JsonNode told) {
        List<String> schedulers = Ground.names(told.path("schedulers"));
        List<String> crews = Ground.names(told.path("crews"));
        Stream<Worker> all = Stream.of(
                        schedulers.stream().skip(1).<Worker>map(name -> new Scheduler(ground, name, pushes)),
                        crews.stream().skip(1).<Worker>map(name -> new CrewPhone(ground, name)),
                        Ground.names(told.path("followOn")).stream()
                                .<Worker>map(name -> new FollowOn(ground, name, pushes)),
                        Stream.<Worker>of(
                                new Probe(ground, schedulers.getFirst(), new CrewPhone(ground, crews.getFirst()))))
                .flatMap(one -> one);
        return all.toList();
    }

    private void note(String when, TrialNode node) throws IOException, InterruptedException {
        long used = Heap.used(node.pid());
        heap.add("%,d MB %s".formatted(used, when));
        System.err.println(heap.getLast());
    }

    private boolean told() {
        System.out.printf(
                "%d schedulers, %d crews, %d of the trade that follows; %,d openings; %d min; pauses of %d s in the mean%n%n",
                wish.schedulers(),
                wish.crews(),
                wish.followOn(),
                wish.openings(),
                wish.time().toMinutes(),
                Think.MEAN.toSeconds());
        System.out.println(counts.table());
        System.out.println("Pushed: " + pushes.words());
        System.out.println("Heap after collection: " + String.join(", ", heap));
        if (counts.errors() > 0) System.out.printf("%,d errors%n", counts.errors());
        return counts.good();
    }

    private static void endAll() {
        List<ProcessHandle> all = ProcessHandle.current().descendants().toList();
        all.forEach(ProcessHandle::destroyForcibly);
        for (ProcessHandle one : all) {
            try {
                one.onExit().get(20, TimeUnit.SECONDS);
            } catch (Exception failure) {
                System.err.println("something of the trial may still run: " + failure);
            }
        }
    }
}
