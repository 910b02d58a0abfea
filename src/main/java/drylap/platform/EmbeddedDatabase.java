package drylap.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/** A PostgreSQL of the application's own, in a folder: data survives restarts and a kill -9 of either process. */
final class EmbeddedDatabase implements Database {
    static final String USER = "postgres";
    private static final Duration START_WAIT = Duration.ofSeconds(60);

    private final EmbeddedPostgres postgres;
    private final FolderLock lock;

    private EmbeddedDatabase(EmbeddedPostgres postgres, FolderLock lock) {
        this.postgres = postgres;
        this.lock = lock;
    }

    /** @throws DatabaseTrouble where another application uses the folder, or PostgreSQL cannot be started in it */
    static EmbeddedDatabase in(Path home) {
        Path path = home.toAbsolutePath().normalize();
        try {
            Files.createDirectories(path);
            FolderLock lock = FolderLock.on(path);
            try {
                return new EmbeddedDatabase(started(new DatabaseFolder(path)), lock);
            } catch (IOException | RuntimeException failure) {
                lock.close();
                throw failure;
            }
        } catch (IOException failure) {
            throw new DatabaseTrouble(
                    "PostgreSQL cannot be started in the folder %s: %s".formatted(path, failure.getMessage()),
                    "See that the folder can be written and has space; DRYLAP_DATA names another one.",
                    failure);
        }
    }

    private static EmbeddedPostgres started(DatabaseFolder folder) throws IOException {
        try {
            OrphanedPostgres.stopOn(folder.data());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while an orphaned PostgreSQL was being stopped", interrupted);
        }
        folder.clearHalfMade();
        EmbeddedPostgres postgres = builder(folder).start();
        folder.markWhole();
        return postgres;
    }

    /** The library's own defaults are for tests that throw their data away; these are for data that stays. */
    private static EmbeddedPostgres.Builder builder(DatabaseFolder folder) throws IOException {
        return EmbeddedPostgres.builder()
                .setOverrideWorkingDirectory(folder.programs().toFile())
                .setDataDirectory(folder.data())
                .setCleanDataDirectory(false)
                .setRegisterShutdownHook(false)
                .setPort(freePort())
                .setPGStartupWait(START_WAIT)
                .setLocaleConfig("locale", "C.UTF-8")
                .setServerConfig("listen_addresses", "127.0.0.1")
                .setServerConfig("unix_socket_directories", "")
                .setServerConfig("fsync", "on")
                .setServerConfig("full_page_writes", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("max_connections", "60");
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    @Override
    public String url() {
        return urlOf(postgres.getPort());
    }

    static String urlOf(int port) {
        return "jdbc:postgresql://127.0.0.1:%d/postgres".formatted(port);
    }

    @Override
    public String user() {
        return USER;
    }

    @Override
    public String password() {
        return "";
    }

    @Override
    public boolean shared() {
        return false;
    }

    @Override
    public void close() throws IOException {
        try (lock) {
            postgres.close();
        }
    }
}
