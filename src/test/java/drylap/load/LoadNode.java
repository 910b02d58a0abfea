package drylap.load;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import drylap.Drylap;
import drylap.crews.Crew;
import drylap.intake.GeneratedFolder;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import tools.jackson.databind.json.JsonMapper;

/**
 * The real application, with its clock set to the first working day of the invented season and a door of the trial's own, through which people,
 * the job and its published plan are put in place before anybody comes. No test's context scans it.
 */
public final class LoadNode {
    /** A Monday, 9 o'clock on the invented coast. */
    private static final Instant BEGIN = Instant.parse("2026-04-13T16:00:00Z");

    private final JobFolders folders;
    private final Planner planner;
    private final Plans plans;
    private final Publications publications;
    private final TestPeople people;
    private final Clock clock;
    private final int port;

    LoadNode(
            JobFolders folders,
            Planner planner,
            Plans plans,
            Publications publications,
            TestPeople people,
            Clock clock,
            Environment environment) {
        this.folders = folders;
        this.planner = planner;
        this.plans = plans;
        this.publications = publications;
        this.people = people;
        this.clock = clock;
        port = environment.getRequiredProperty("trial.port", Integer.class);
    }

    public static void main(String[] args) {
        new SpringApplicationBuilder(Drylap.class, LoadNode.class).run(args);
    }

    @Bean
    @Primary
    static Clock seasonClock() {
        return Clock.offset(Clock.systemUTC(), Duration.between(Instant.now(), BEGIN));
    }

    /** What the driver is told. */
    record Ground(
            long folder,
            String now,
            List<String> schedulers,
            List<String> crews,
            List<String> followOn,
            List<String> openings) {}

    @EventListener(ApplicationReadyEvent.class)
    void open() throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        server.createContext("/begin", this::begin);
        server.start();
    }

    private void begin(HttpExchange exchange) throws IOException {
        Map<String, Integer> given = Arrays.stream(
                        exchange.getRequestURI().getQuery().split("&"))
                .map(one -> one.split("=", 2))
                .collect(Collectors.toMap(one -> one[0], one -> Integer.valueOf(one[1])));
        byte[] body =
                JsonMapper.builder().build().writeValueAsString(begin(given)).getBytes(StandardCharsets.UTF_8);
        try (exchange) {
            exchange.sendResponseHeaders(200, body.length);
            exchange.getResponseBody().write(body);
        }
    }

    private Ground begin(Map<String, Integer> given) {
        int openings = number(given, "openings");
        JobFolder job = GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), 1);
        Person who = people.scheduler();
        FolderId folder = folders.save(who, "load", job);
        // stopped before it begins it answers with its first legal plan: how good that is makes no difference here
        var plan = planner.plan(folders.load(folder), new PlanRequest(null, null, 1L, 1), _ -> {}, () -> true);
        publications.publish(who, folder, plans.save(folder, plan), null);
        return new Ground(
                folder.value(),
                clock.instant().toString(),
                IntStream.range(0, number(given, "schedulers"))
                        .mapToObj(_ -> people.scheduler().signInName())
                        .toList(),
                added(number(given, "crews"), Role.WINDOW_CREW, crews(job, Trade.WINDOW)),
                added(number(given, "followOn"), Role.FOLLOW_ON, crews(job, Trade.SIDING)),
                job.openings().stream().map(one -> one.id().value()).toList());
    }

    private static int number(Map<String, Integer> given, String name) {
        return Objects.requireNonNull(given.get(name), name);
    }

    private List<String> added(int count, Role role, List<Crew> crews) {
        return IntStream.range(0, count)
                .mapToObj(i -> crews.get(i % crews.size()).id().value())
                .map(crew -> people.add(role, Reach.EVERYWHERE, crew).signInName())
                .toList();
    }

    private static List<Crew> crews(JobFolder job, Trade trade) {
        return job.crews().stream().filter(crew -> crew.trade() == trade).toList();
    }
}
