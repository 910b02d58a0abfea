package drylap.keeping;

import drylap.keeping.Manifest.FilePart;
import drylap.keeping.Manifest.SequencePart;
import drylap.keeping.Manifest.TablePart;
import drylap.kernel.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Fills a database that has its tables and nothing that matters in them, in one transaction; what it wrote is read again and compared. */
final class Restore {
    private final Connection connection;
    private final BackupFile backup;
    private final TableText text;

    Restore(Connection connection, BackupFile backup) throws SQLException {
        this.connection = connection;
        this.backup = backup;
        connection.setAutoCommit(false);
        text = new TableText(connection);
    }

    /** Commits only when all of it is there; the caller rolls back otherwise. */
    void rows() throws SQLException, IOException, BackupTrouble {
        sameTables();
        triggers("disable");
        execute("truncate " + names());
        for (TablePart table : backup.manifest().tables()) fill(table);
        for (SequencePart sequence : backup.manifest().sequences()) set(sequence);
        execute("set constraints all immediate");
        triggers("enable");
        connection.commit();
    }

    private void sameTables() throws SQLException, BackupTrouble {
        var there = new Catalog(connection).tables();
        for (TablePart table : backup.manifest().tables())
            if (!table.columns().equals(there.get(table.name())))
                throw new BackupTrouble(
                        "the backup has a table %s with the columns %s".formatted(table.name(), table.columns()),
                        "this version of Drylap has there " + there.get(table.name()));
    }

    /** What guards tables against people would also guard them against their own rows. */
    private void triggers(String what) throws SQLException {
        for (TablePart table : backup.manifest().tables())
            execute("alter table %s %s trigger user".formatted(text.quoted(table.name()), what));
    }

    private String names() throws SQLException {
        List<String> names = new ArrayList<>();
        for (TablePart table : backup.manifest().tables()) names.add(text.quoted(table.name()));
        return String.join(", ", names);
    }

    private void fill(TablePart table) throws SQLException, IOException, BackupTrouble {
        try (InputStream rows = backup.part(BackupWriter.TABLES + table.name())) {
            text.copyIn(table.name(), table.columns(), rows);
        }
        var copied = text.copyOut(table.name(), table.columns(), OutputStream.nullOutputStream());
        if (copied.rows() != table.rows() || !copied.sha256().equals(table.sha256()))
            throw new BackupTrouble(
                    "the table %s reads otherwise than it was backed up".formatted(table.name()), "nothing was kept");
    }

    private void set(SequencePart sequence) throws SQLException {
        try (var statement = connection.prepareStatement("select setval(?::regclass, ?, ?)")) {
            statement.setString(1, text.quoted(sequence.name()));
            statement.setLong(2, sequence.value());
            statement.setBoolean(3, sequence.called());
            statement.execute();
        }
    }

    private void execute(String sql) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    /** Writes the stored files, and reads each again. */
    static void files(BackupFile backup, Path folder) throws IOException, BackupTrouble {
        for (FilePart file : backup.manifest().files()) {
            Path target = folder.resolve(file.path()).normalize();
            if (!target.startsWith(folder))
                throw new BackupTrouble(
                        "the backup has a file " + file.path(), "accepted are names within the folder of files");
            Files.createDirectories(target.getParent());
            try (InputStream in = backup.part(BackupWriter.FILES + file.path())) {
                Files.copy(in, target);
            }
            try (InputStream written = Files.newInputStream(target)) {
                if (!Sha256.hex(written).equals(file.sha256()))
                    throw new BackupTrouble("the file %s was not written whole".formatted(target), "nothing was kept");
            }
        }
    }
}
