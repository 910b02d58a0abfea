package drylap.faults;

import drylap.Drylap;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.awaitility.Awaitility;

/** A node of the application in a process of its own, started again on the same ports as a service manager does. */
public final class TrialNode {
    private static final Duration PATIENCE = Duration.ofSeconds(240);
    private static final HttpClient HTTP =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(2)).build();

    /** It is killed soon: most of its life would go into compiling it well. */
    static final List<String> BRIEF = List.of("-Xmx512m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

    static final List<String> LASTING = List.of("-Xmx512m");

    private final Kind kind;
    private final int port = Ports.free();
    private final int door = Ports.free();
    private final Path console;
    private final Path home;
    private final String database;
    private final WrongClock clock;
    private Process process;

    /**
     * What runs in it.
     *
     * @param words of the command line, the main class first
     * @param jvm options of the JVM
     * @param threads for jobs; 0: it only answers
     * @param ours whether the trial's own classes are there too
     */
    public record Kind(List<String> words, List<String> jvm, int threads, boolean ours) {}

    /** One that only answers or only works. */
    TrialNode(boolean web, String name, Path home, String database, List<String> jvm) throws IOException {
        this(
                web
                        ? new Kind(List.of(TrialWebNode.class.getName()), jvm, 0, true)
                        : new Kind(List.of(Drylap.class.getName(), "worker"), jvm, 2, false),
                name,
                home,
                database);
    }

    /** @param database its address for Java */
    public TrialNode(Kind kind, String name, Path home, String database) throws IOException {
        this.kind = kind;
        this.home = home;
        this.database = database;
        console = home.resolve(name + ".txt");
        clock = new WrongClock(home.resolve(name + ".clock"));
        process = launch();
    }

    private Process launch() throws IOException {
        List<String> words = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-Dvaadin.productionMode=true",
                "-Dtrial.port=" + door,
                "-cp",
                classPath(kind.ours())));
        words.addAll(1, kind.jvm());
        words.addAll(kind.words());
        var builder = new ProcessBuilder(words)
                .directory(home.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(console.toFile()));
        // what the caller has set is for a Drylap of theirs
        builder.environment().keySet().removeIf(name -> name.startsWith("DRYLAP_"));
        builder.environment()
                .putAll(Map.of(
                        "DRYLAP_DB_URL",
                        database,
                        "DRYLAP_DB_USER",
                        "postgres",
                        "DRYLAP_DB_PASSWORD",
                        "",
                        "DRYLAP_DEMO",
                        "",
                        "DRYLAP_PORT",
                        Integer.toString(port),
                        "DRYLAP_WORK_THREADS",
                        Integer.toString(kind.threads())));
        builder.environment().putAll(clock.environment());
        return builder.start();
    }

    /** By so much, from within a second on until it is set again or the node is started anew; behind where it is negative. */
    void setClockAhead(Duration by) {
        clock.set(by);
    }

    /** A worker is started as people start it; a web node has the trial's own door beside it. */
    private static String classPath(boolean tests) {
        String all = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Arrays.stream(all.split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .filter(entry -> tests || !entry.endsWith("test-classes"))
                .collect(Collectors.joining(File.pathSeparator));
    }

    public URI at(String path) {
        return URI.create("http://127.0.0.1:%d%s".formatted(port, path));
    }

    public URI door(String path) {
        return URI.create("http://127.0.0.1:%d%s".formatted(door, path));
    }

    public long pid() {
        return process.pid();
    }

    public boolean isRunning() {
        return process.isAlive();
    }

    public Path console() {
        return console;
    }

    public void awaitReady() {
        Awaitility.await()
                .atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(200))
                .failFast("it ended early; see " + console, () -> !process.isAlive())
                .until(this::ready);
    }

    boolean ready() {
        try {
            var request = HttpRequest.newBuilder(at("/health/ready"))
                    .timeout(Duration.ofSeconds(5))
                    .build();
            return HTTP.send(request, HttpResponse.BodyHandlers.ofString()).statusCode() == 200;
        } catch (IOException notYet) {
            return false;
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    /** kill -9: no hook runs. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** What a service manager does. */
    void stop() throws InterruptedException {
        process.destroy();
        process.waitFor();
    }

    void start() throws IOException {
        process = launch();
    }
}
