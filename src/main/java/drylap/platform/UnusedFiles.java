package drylap.platform;

import static drylap.persistence.jooq.Tables.STORED_FILE;
import static org.jooq.impl.DSL.noCondition;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Throws away files to which no row refers: what an upload left that came to nothing, and what was replaced. Whoever stores a file
 * holds the lock of its row until the reference is written, and so does whoever throws one away until it is gone; thus a file is
 * never taken from under an upload of the same bytes.
 */
@Service
final class UnusedFiles implements RegularWork {
    private static final Logger LOG = LoggerFactory.getLogger(UnusedFiles.class);
    private static final Duration GRACE = Duration.ofDays(1);
    private static final int MOST_AT_A_TIME = 500;

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final FileShelf shelf;
    private final List<FileUse> uses;

    UnusedFiles(DSLContext db, TransactionTemplate transaction, Clock clock, FileShelf shelf, List<FileUse> uses) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
        this.shelf = shelf;
        this.uses = uses;
    }

    @Override
    public String name() {
        return "unused-files";
    }

    @Override
    public Duration pause() {
        return Duration.ofHours(6);
    }

    @Override
    public void run() {
        if (uses.isEmpty()) return;
        Instant then = clock.instant().minus(GRACE);
        long gone = withRows(then).stream().filter(this::drop).count();
        gone += withoutRows(then).stream().filter(this::dropStray).count();
        shelf.folder().ifPresent(folder -> folder.sweep(then));
        if (gone > 0) LOG.info("Threw away {} files to which nothing refers", gone);
    }

    private List<String> withRows(Instant then) {
        return db.select(STORED_FILE.SHA256)
                .from(STORED_FILE)
                .where(STORED_FILE.STORED_AT.lt(then), unused())
                .limit(MOST_AT_A_TIME)
                .fetch(STORED_FILE.SHA256);
    }

    /** The second statement looks anew, after the lock is ours: an upload may have been faster. */
    boolean drop(String digest) {
        return Boolean.TRUE.equals(transaction.execute(_ -> {
            boolean ours = db.select(STORED_FILE.SHA256)
                    .from(STORED_FILE)
                    .where(STORED_FILE.SHA256.eq(digest))
                    .forUpdate()
                    .skipLocked()
                    .fetchOptional()
                    .isPresent();
            return ours && gone(digest);
        }));
    }

    private boolean gone(String digest) {
        boolean gone = db.deleteFrom(STORED_FILE)
                        .where(STORED_FILE.SHA256.eq(digest), unused())
                        .execute()
                == 1;
        if (gone) shelf.folder().ifPresent(folder -> folder.delete(digest));
        return gone;
    }

    private List<String> withoutRows(Instant then) {
        List<String> old = shelf.folder().map(folder -> folder.olderThan(then)).orElse(List.of());
        var known = db.select(STORED_FILE.SHA256).from(STORED_FILE).fetchSet(STORED_FILE.SHA256);
        return old.stream()
                .filter(digest -> !known.contains(digest))
                .limit(MOST_AT_A_TIME)
                .toList();
    }

    /** A row of our own waits for an upload that is under way, and finds its row; or makes later ones wait. */
    boolean dropStray(String digest) {
        return Boolean.TRUE.equals(transaction.execute(_ -> {
            boolean ours = db.insertInto(STORED_FILE)
                            .set(STORED_FILE.SHA256, digest)
                            .set(STORED_FILE.SIZE_BYTES, 0)
                            .set(STORED_FILE.STORED_AT, clock.instant())
                            .onConflictDoNothing()
                            .execute()
                    == 1;
            return ours && gone(digest);
        }));
    }

    private Condition unused() {
        return uses.stream().map(use -> use.uses(STORED_FILE.SHA256).not()).reduce(noCondition(), Condition::and);
    }
}
