package drylap.platform;

import static drylap.persistence.jooq.Tables.FILE_FOLDER;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.springframework.transaction.support.TransactionTemplate;

/** Sees that a database and its folder of files belong together: they carry the same mark. */
record FileFolderClaim(DSLContext db, TransactionTemplate transaction, Clock clock) {
    private static final String MARK = "of-database.txt";

    /**
     * Claims a folder for the database on the first start with it; later starts, of any node, must find the same one.
     *
     * @throws DatabaseTrouble where the folder is not the database's
     */
    void of(FileFolder folder) {
        transaction.executeWithoutResult(_ -> {
            var ours = db.selectFrom(FILE_FOLDER).forUpdate().fetchSingle();
            var found = markIn(folder.root());
            boolean claimed = ours.getClaimedAt() != null;
            if (found.isEmpty() && claimed) throw notOurs(folder, "has no mark", ours.getMark());
            if (found.isPresent() && !found.get().equals(ours.getMark().toString()))
                throw notOurs(folder, "has the mark " + found.get(), ours.getMark());
            if (found.isEmpty()) mark(folder.root(), ours.getMark());
            if (!claimed)
                db.update(FILE_FOLDER)
                        .set(FILE_FOLDER.CLAIMED_AT, clock.instant())
                        .execute();
        });
    }

    /** @throws DatabaseTrouble where files of the database lie in a folder that nobody names */
    void ofNone() {
        if (db.fetchExists(FILE_FOLDER, FILE_FOLDER.CLAIMED_AT.isNotNull()))
            throw new DatabaseTrouble(
                    "The photos of this database lie in a folder, and no folder is named",
                    "Name it with DRYLAP_FILES; every node must reach the same one.");
    }

    private static DatabaseTrouble notOurs(FileFolder folder, String found, UUID mark) {
        return new DatabaseTrouble(
                "The folder %s does not hold the photos of this database: it %s, not %s"
                        .formatted(folder.root(), found, mark),
                "Name the right folder with DRYLAP_FILES; every node must reach the same one. Where the folder is lost, restore it "
                        + "from a backup; where there is none, put a file %s with %s into a new one."
                                .formatted(MARK, mark));
    }

    private static Optional<String> markIn(Path root) {
        Path file = root.resolve(MARK);
        try {
            return Files.exists(file) ? Optional.of(Files.readString(file).strip()) : Optional.empty();
        } catch (IOException failure) {
            throw new UncheckedIOException("cannot be read: " + file, failure);
        }
    }

    private static void mark(Path root, UUID mark) {
        try {
            Files.writeString(root.resolve(MARK), mark + "\n");
        } catch (IOException failure) {
            throw new UncheckedIOException("cannot be written: " + root, failure);
        }
    }
}
