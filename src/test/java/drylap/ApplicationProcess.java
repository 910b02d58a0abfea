package drylap;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.awaitility.Awaitility;

/** The application in a process of its own, on a database folder; its console goes to a file beside that folder. */
final class ApplicationProcess implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(180);

    private final Process process;
    private final Path data;
    private final Path console;

    private ApplicationProcess(Process process, Path data, Path console) {
        this.process = process;
        this.data = data;
        this.console = console;
    }

    /** The application as people start it. */
    static ApplicationProcess start(Path home) throws IOException {
        return start(home, Drylap.class, "none");
    }

    /** The application with work for {@link KilledApplication}. */
    static ApplicationProcess start(Path home, String work) throws IOException {
        return start(home, KilledApplication.class, work);
    }

    /** What is handed to people, with nothing beside it. */
    static ApplicationProcess startJar(Path home, Path jar) throws IOException {
        return start(home, "-jar", jar.toString());
    }

    private static ApplicationProcess start(Path home, Class<?> main, String work) throws IOException {
        return start(home, "-Dwork=" + work, "-cp", classPath(main == KilledApplication.class), main.getName());
    }

    private static ApplicationProcess start(Path home, String... program) throws IOException {
        Path data = home.resolve("data");
        Path console = Files.createTempFile(home, "console", ".txt");
        List<String> java = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx768m",
                // it lives for seconds: most of them would go into compiling it well
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "--enable-native-access=ALL-UNNAMED",
                "-Dvaadin.productionMode=true",
                "-Dserver.port=0",
                "-Ddrylap.demo=",
                "-Ddrylap.data=" + data);
        Process process = new ProcessBuilder(
                        Stream.concat(java.stream(), Stream.of(program)).toList())
                .redirectErrorStream(true)
                .redirectOutput(console.toFile())
                .start();
        return new ApplicationProcess(process, data, console);
    }

    /** The application as people start it must not find the tests' classes and settings. */
    private static String classPath(boolean tests) {
        String all = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Arrays.stream(all.split(File.pathSeparator))
                .filter(entry -> tests || !entry.endsWith("test-classes"))
                .collect(Collectors.joining(File.pathSeparator));
    }

    String awaitLine(Predicate<String> wanted) {
        return Awaitility.await()
                .atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(100))
                .failFast(
                        "the application ended early; see " + console,
                        () -> !process.isAlive() && lines().stream().noneMatch(wanted))
                .until(() -> lines().stream().filter(wanted).findFirst(), java.util.Optional::isPresent)
                .orElseThrow();
    }

    /** The address that the ready line prints. */
    URI awaitReady() {
        String line = awaitLine(text -> text.startsWith("Drylap is ready at "));
        return URI.create(line.substring(line.indexOf("http")));
    }

    /** A build that skips the front end ({@code -Dvaadin.skip}) has no page to show, and answers with an error. */
    static boolean hasFrontEnd() {
        return ApplicationProcess.class.getResource("/META-INF/VAADIN/webapp/index.html") != null;
    }

    /** The status with which the page answers. */
    int page() throws IOException, InterruptedException {
        try (HttpClient client = HttpClient.newHttpClient()) {
            HttpRequest request =
                    HttpRequest.newBuilder(awaitReady().resolve("/sign-in")).build();
            return client.send(request, HttpResponse.BodyHandlers.ofString()).statusCode();
        }
    }

    /** PostgreSQL writes its port into the fourth line of its pid file. */
    Connection database() throws IOException, SQLException {
        String port =
                Files.readAllLines(data.resolve("data/postmaster.pid")).get(3).strip();
        return DriverManager.getConnection("jdbc:postgresql://127.0.0.1:%s/postgres".formatted(port), "postgres", "");
    }

    /** kill -9: no hook runs. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    int awaitEnd() throws InterruptedException {
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) throw new AssertionError("it goes on: " + said());
        return process.exitValue();
    }

    /** What a person's Ctrl-C or a service manager does. */
    void stop() throws InterruptedException {
        process.destroy();
        awaitEnd();
    }

    String said() {
        return String.join("\n", lines());
    }

    private List<String> lines() {
        try {
            return Files.readAllLines(console);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }

    /** PostgreSQL processes that work on this folder. */
    List<String> databaseProcesses() {
        return ProcessHandle.allProcesses()
                .filter(other -> other.pid() != process.pid())
                .map(other -> other.info().commandLine().orElse(""))
                .filter(line -> line.contains("postgres")
                        && line.contains(data.resolve("data").toString()))
                .toList();
    }

    @Override
    public void close() throws InterruptedException {
        if (process.isAlive()) stop();
    }
}
