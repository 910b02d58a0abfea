package drylap.keeping;

import drylap.platform.DatabasePlace;
import drylap.platform.DatabasePlace.Reached;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationVersion;
import org.postgresql.ds.PGSimpleDataSource;

/** Writes backups and takes them back. */
public final class Backups {
    /** @param bytes of the stored files */
    public record Kept(int tables, long rows, int files, long bytes) {
        static Kept of(Manifest manifest) {
            return new Kept(
                    manifest.tables().size(),
                    manifest.rows(),
                    manifest.files().size(),
                    manifest.files().stream()
                            .mapToLong(Manifest.FilePart::bytes)
                            .sum());
        }
    }

    private Backups() {}

    /**
     * Backs up a database, which may be in use, and the stored files beside it. The file is there whole or not at all.
     *
     * @throws BackupTrouble where there is nothing to back up, or the file is there already
     */
    public static Kept write(DatabasePlace place, Path out, Clock clock)
            throws BackupTrouble, IOException, SQLException {
        if (!place.exists())
            throw new BackupTrouble(
                    "there is no database in " + place.data().toAbsolutePath(),
                    "DRYLAP_DATA names the folder in which the application keeps one, DRYLAP_DB_URL one that others run");
        if (Files.exists(out)) throw new BackupTrouble(out + " is there already", "accepted is a new file");
        Path half = out.resolveSibling(out.getFileName() + ".half");
        try (Reached reached = place.reach()) {
            Manifest manifest;
            try (var stream = Files.newOutputStream(half, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                manifest = new BackupWriter(clock).write(reached.atOneMoment(), place.files(), stream);
            } catch (FileAlreadyExistsException other) {
                throw new BackupTrouble(half + " is there already", "wait for the backup that writes it, or delete it");
            } catch (IOException | SQLException | RuntimeException failed) {
                Files.deleteIfExists(half);
                throw failed;
            }
            force(half);
            Files.move(half, out, StandardCopyOption.ATOMIC_MOVE);
            return Kept.of(manifest);
        }
    }

    private static void force(Path file) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /**
     * Takes a backup back into a database without tables, after every byte of it has been checked. All of it is there in the end or
     * nothing is.
     *
     * @throws BackupTrouble where the backup is damaged or from a later version, or there is something already where it would go
     */
    public static Kept restore(Path from, DatabasePlace place) throws BackupTrouble, IOException, SQLException {
        Path files = place.files().toAbsolutePath().normalize();
        try (BackupFile backup = BackupFile.open(from)) {
            if (holdsAnything(files))
                throw new BackupTrouble(
                        "there are files in " + files, "accepted is a folder that is empty or not there");
            try (Reached reached = place.reach()) {
                if (!new Catalog(reached.connection()).isEmpty())
                    throw new BackupTrouble(
                            "the database has tables already",
                            "a backup is taken back into an empty one: name another with DRYLAP_DATA or DRYLAP_DB_URL");
                fill(reached.connection(), backup, place, files);
            }
            return Kept.of(backup.manifest());
        }
    }

    private static boolean holdsAnything(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) return false;
        try (Stream<Path> within = Files.walk(folder)) {
            return within.anyMatch(Files::isRegularFile);
        }
    }

    private static void fill(Connection connection, BackupFile backup, DatabasePlace place, Path files)
            throws BackupTrouble, IOException, SQLException {
        boolean whole = false;
        try {
            migrate(connection, backup.manifest().schema(), place);
            Restore.files(backup, files);
            new Restore(connection, backup).rows();
            whole = true;
        } finally {
            if (!whole) clear(connection, backup, files);
        }
    }

    /** Gives the database the tables that the backed-up one had; the application brings them up to date when it starts. */
    private static void migrate(Connection connection, String schema, DatabasePlace place)
            throws SQLException, BackupTrouble {
        var source = new PGSimpleDataSource();
        source.setUrl(connection.getMetaData().getURL());
        source.setUser(connection.getMetaData().getUserName());
        source.setPassword(place.password() == null ? "" : place.password());
        MigrationVersion version = MigrationVersion.fromVersion(schema);
        var flyway = Flyway.configure().dataSource(source);
        boolean known =
                Stream.of(flyway.load().info().all()).anyMatch(migration -> version.equals(migration.getVersion()));
        if (!known)
            throw new BackupTrouble(
                    "the backup is from a later version of Drylap (its tables are those of migration %s)"
                            .formatted(schema),
                    "accepted are backups of this version and of earlier ones");
        flyway.target(version).load().migrate();
    }

    private static void clear(Connection connection, BackupFile backup, Path files) throws SQLException, IOException {
        if (!connection.getAutoCommit()) connection.rollback();
        connection.setAutoCommit(true);
        try (var statement = connection.createStatement()) {
            statement.execute("drop schema public cascade");
            statement.execute("create schema public");
        }
        for (var file : backup.manifest().files()) {
            Path target = files.resolve(file.path()).normalize();
            if (target.startsWith(files)) Files.deleteIfExists(target);
        }
    }
}
