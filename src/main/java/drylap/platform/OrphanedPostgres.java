package drylap.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A PostgreSQL that outlived the application which started it. Whoever holds the folder's lock may stop it: port and
 * options are then the new application's own, and no two servers meet on one data directory.
 */
final class OrphanedPostgres {
    private static final Logger LOG = LoggerFactory.getLogger(OrphanedPostgres.class);
    private static final int PATIENCE_S = 30;

    private OrphanedPostgres() {}

    static void stopOn(Path data) throws IOException, InterruptedException {
        Path pidFile = pidFile(data);
        if (!Files.exists(pidFile)) return;
        Optional<ProcessHandle> orphan = runningOn(data);
        if (orphan.isPresent()) stop(orphan.get());
        else Files.deleteIfExists(pidFile);
    }

    static Path pidFile(Path data) {
        return data.resolve("postmaster.pid");
    }

    /** Whether a PostgreSQL runs on a data directory. */
    static boolean isRunningOn(Path data) throws IOException {
        return Files.exists(pidFile(data)) && runningOn(data).isPresent();
    }

    private static Optional<ProcessHandle> runningOn(Path data) throws IOException {
        return pidIn(pidFile(data)).flatMap(ProcessHandle::of).filter(process -> runsOn(process, data));
    }

    private static Optional<Long> pidIn(Path pidFile) throws IOException {
        List<String> lines = Files.readAllLines(pidFile);
        return lines.stream()
                .findFirst()
                .map(String::strip)
                .filter(line -> line.matches("\\d{1,18}"))
                .map(Long::valueOf);
    }

    /** A pid is used again by the system: only a PostgreSQL on this very directory is ours to stop. */
    private static boolean runsOn(ProcessHandle process, Path data) {
        String line = process.info().commandLine().orElse("");
        return line.contains("postgres") && line.contains(data.toString());
    }

    private static void stop(ProcessHandle orphan) throws IOException, InterruptedException {
        LOG.warn("Stopping the PostgreSQL (process {}) that an application left behind", orphan.pid());
        // SIGINT is PostgreSQL's fast shutdown: it ends sessions, writes everything and goes
        new ProcessBuilder("kill", "-INT", Long.toString(orphan.pid())).start().waitFor();
        try {
            orphan.onExit().get(PATIENCE_S, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException stuck) {
            orphan.destroyForcibly();
            LOG.warn("It did not end within {} s and was killed; PostgreSQL recovers from its log", PATIENCE_S);
        }
    }
}
