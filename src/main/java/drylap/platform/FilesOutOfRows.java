package drylap.platform;

import static drylap.persistence.jooq.Tables.STORED_FILE;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Moves files from their rows to the folder. A row gives up its bytes only once they are safely on disk, each in a transaction of
 * its own: whenever a node dies, each file is in its row, in the folder, or in both.
 */
@Service
final class FilesOutOfRows implements RegularWork {
    private static final Logger LOG = LoggerFactory.getLogger(FilesOutOfRows.class);
    private static final Duration AT_A_TIME = Duration.ofSeconds(10);

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final FileShelf shelf;

    FilesOutOfRows(DSLContext db, TransactionTemplate transaction, Clock clock, FileShelf shelf) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
        this.shelf = shelf;
    }

    @Override
    public String name() {
        return "files-out-of-rows";
    }

    @Override
    public Duration pause() {
        return Duration.ofSeconds(30);
    }

    @Override
    public void run() {
        shelf.folder().ifPresent(folder -> {
            Instant end = clock.instant().plus(AT_A_TIME);
            int moved = 0;
            while (clock.instant().isBefore(end) && moveOne(folder)) moved++;
            if (moved > 0) LOG.info("Moved {} files from the database to {}", moved, folder.root());
        });
    }

    /** False where none is left, or the last is being moved elsewhere. */
    private boolean moveOne(FileFolder folder) {
        return Boolean.TRUE.equals(transaction.execute(_ -> db.selectFrom(STORED_FILE)
                .where(STORED_FILE.CONTENT.isNotNull())
                .limit(1)
                .forUpdate()
                .skipLocked()
                .fetchOptional()
                .map(row -> {
                    folder.write(row.getSha256(), row.getContent());
                    return db.update(STORED_FILE)
                                    .setNull(STORED_FILE.CONTENT)
                                    .where(STORED_FILE.SHA256.eq(row.getSha256()))
                                    .execute()
                            == 1;
                })
                .orElse(false)));
    }
}
