package drylap.faults;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.jspecify.annotations.Nullable;

/** A PostgreSQL as a service manager runs one: its process and all of its children, to be killed, stopped and started again. */
public final class TrialPostgres {
    private static final Duration PATIENCE = Duration.ofSeconds(120);
    /** The library unpacks its binaries once in a process, wherever it is told to. */
    private static @Nullable Path unpacked;

    private final Path data;
    private final Path console;
    private final Path program;
    private final int port;
    private final List<String> settings;
    private Process process;

    private TrialPostgres(Path data, Path console, Path program, int port, List<String> settings) throws IOException {
        this.data = data;
        this.console = console;
        this.program = program;
        this.port = port;
        this.settings = settings;
        process = launch();
    }

    /** @param data where the data are to be, which is empty yet */
    public static TrialPostgres in(Path home, Path data, List<String> settings) throws IOException {
        EmbeddedPostgres.builder()
                .setOverrideWorkingDirectory(home.resolve("postgres").toFile())
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                .setRegisterShutdownHook(false)
                .setLocaleConfig("locale", "C.UTF-8")
                .setPGStartupWait(PATIENCE)
                .start()
                .close();
        Path program = unpacked;
        if (program == null) program = program(home.resolve("postgres"));
        unpacked = program;
        return new TrialPostgres(data, home.resolve("postgres.txt"), program, Ports.free(), settings);
    }

    private static Path program(Path unpackedTo) throws IOException {
        try (Stream<Path> files = Files.walk(unpackedTo)) {
            return files.filter(file -> file.endsWith("bin/postgres"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private Process launch() throws IOException {
        List<String> words = new ArrayList<>();
        // it refuses to run as root, and in a user namespace of its own it does not
        if (System.getProperty("user.name").equals("root")) words.addAll(List.of("unshare", "-U"));
        words.addAll(List.of(program.toString(), "-D", data.toString(), "-p", Integer.toString(port)));
        for (String setting : List.of(
                "listen_addresses=127.0.0.1",
                "unix_socket_directories=",
                "fsync=on",
                "synchronous_commit=on",
                "full_page_writes=on",
                "max_connections=100",
                // so that a small disk holds what the trial writes
                "max_wal_size=128MB")) words.addAll(List.of("-c", setting));
        settings.forEach(setting -> words.addAll(List.of("-c", setting)));
        return new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(console.toFile()))
                .start();
    }

    public int port() {
        return port;
    }

    /** Not by the wire that nodes use. */
    public Connection connection() throws SQLException {
        return DriverManager.getConnection("jdbc:postgresql://127.0.0.1:%d/postgres".formatted(port), "postgres", "");
    }

    boolean isRunning() {
        return process.isAlive();
    }

    void start() throws IOException {
        process = launch();
    }

    public void awaitReady() {
        Awaitility.await().atMost(PATIENCE).pollInterval(Duration.ofMillis(100)).until(() -> {
            try (Connection connection = connection()) {
                return connection.isValid(5);
            } catch (SQLException notYet) {
                return false;
            }
        });
    }

    /** kill -9 to all of it at once: nothing is written any more. */
    void kill() throws InterruptedException {
        List<ProcessHandle> all = all();
        all.forEach(ProcessHandle::destroyForcibly);
        process.waitFor();
        Awaitility.await().atMost(PATIENCE).until(() -> all.stream().noneMatch(ProcessHandle::isAlive));
    }

    /** It neither answers nor closes anything. */
    void freeze() throws IOException, InterruptedException {
        signal("STOP");
    }

    void thaw() throws IOException, InterruptedException {
        signal("CONT");
    }

    private void signal(String name) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of("kill", "-" + name));
        all().forEach(one -> words.add(Long.toString(one.pid())));
        new ProcessBuilder(words).start().waitFor();
    }

    private List<ProcessHandle> all() {
        return Stream.concat(Stream.of(process.toHandle()), process.descendants())
                .toList();
    }
}
