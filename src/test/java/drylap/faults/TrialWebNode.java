package drylap.faults;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import drylap.Drylap;
import drylap.intake.GeneratedFolder;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.planning.JobFolders;
import drylap.planning.PlanId;
import drylap.planning.PlanRequest;
import drylap.planning.PlanRuns;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.PublicationId;
import drylap.planning.Publications;
import drylap.planning.PublishResult;
import drylap.security.FirstUse;
import drylap.security.People;
import drylap.security.Person;
import drylap.tokens.ApiTokens;
import drylap.tokens.Scope;
import drylap.tokens.TokenRequest;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;

/**
 * The real application with a door of the trial's own beside it, for what people do on screens and other programs cannot: it calls the services
 * that the screens call, and answers once they have returned. No test's context scans it.
 */
public final class TrialWebNode {
    private static final int MOVES = 300;

    private final JobFolders folders;
    private final Planner planner;
    private final Plans plans;
    private final PlanRuns runs;
    private final Publications publications;
    private final People people;
    private final FirstUse first;
    private final ApiTokens tokens;
    private final int port;

    TrialWebNode(
            JobFolders folders,
            Planner planner,
            Plans plans,
            PlanRuns runs,
            Publications publications,
            People people,
            FirstUse first,
            ApiTokens tokens,
            Environment environment) {
        this.folders = folders;
        this.planner = planner;
        this.plans = plans;
        this.runs = runs;
        this.publications = publications;
        this.people = people;
        this.first = first;
        this.tokens = tokens;
        port = environment.getRequiredProperty("trial.port", Integer.class);
    }

    public static void main(String[] args) {
        new SpringApplicationBuilder(Drylap.class, TrialWebNode.class).run(args);
    }

    @EventListener(ApplicationReadyEvent.class)
    void open() throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        server.setExecutor(Executors.newVirtualThreadPerTaskExecutor());
        server.createContext("/", this::answer);
        server.start();
    }

    private void answer(HttpExchange exchange) throws IOException {
        Map<String, String> given = parameters(exchange.getRequestURI().getQuery());
        int status = 200;
        String words;
        try {
            words = act(exchange.getRequestURI().getPath(), given);
        } catch (RuntimeException failure) {
            status = 500;
            words = String.valueOf(failure);
        }
        byte[] body = words.getBytes(StandardCharsets.UTF_8);
        try (exchange) {
            exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
            exchange.getResponseBody().write(body);
        }
    }

    private static Map<String, String> parameters(String query) {
        return Arrays.stream(query.split("&"))
                .map(one -> one.split("=", 2))
                .collect(Collectors.toMap(one -> one[0], one -> one[1]));
    }

    private String act(String path, Map<String, String> given) {
        return switch (path) {
            case "/begin" -> begin(given);
            case "/token" -> token();
            case "/import" -> bringIn(given);
            case "/plan" -> plan(number(given, "folder"));
            case "/publish" -> publish(given);
            case "/run" -> run(given);
            default -> throw new IllegalArgumentException(path);
        };
    }

    private String begin(Map<String, String> given) {
        return String.valueOf(first.make(given.get("code"), "Trial", "trial", given.get("password"), true));
    }

    private Person who() {
        return people.own().getFirst();
    }

    private String token() {
        var who = who();
        var wanted = new TokenRequest(
                who.id(),
                "trial",
                EnumSet.allOf(Scope.class),
                Reach.EVERYWHERE,
                Instant.now().plus(Duration.ofDays(2)));
        return tokens.make(who, wanted).secret();
    }

    private String bringIn(Map<String, String> given) {
        int openings = (int) number(given, "openings");
        var folder = GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), number(given, "seed"));
        return Long.toString(folders.save(who(), given.get("name"), folder).value());
    }

    /** A plan to publish, found at once. */
    private String plan(long folder) {
        var id = new FolderId(folder);
        var found = planner.plan(folders.load(id), new PlanRequest(null, null, (long) MOVES, 1), _ -> {}, () -> false);
        return Long.toString(plans.save(id, found).value());
    }

    private String publish(Map<String, String> given) {
        String seen = given.get("seen");
        var result = publications.publish(
                who(),
                new FolderId(number(given, "folder")),
                new PlanId(number(given, "plan")),
                seen.equals("null") ? null : new PublicationId(Long.parseLong(seen)));
        return switch (result) {
            case PublishResult.Published done ->
                "published " + done.publication().id().value();
            case PublishResult.PublishedMeanwhile other ->
                "meanwhile " + other.newer().id().value();
        };
    }

    private String run(Map<String, String> given) {
        var time = Duration.ofMillis(number(given, "ms"));
        return Long.toString(
                runs.propose(who(), new FolderId(number(given, "folder")), time).value());
    }

    private static long number(Map<String, String> given, String name) {
        return Long.parseLong(given.get(name));
    }
}
