package drylap.security;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static drylap.persistence.jooq.Tables.HISTORY_SEAL;

import drylap.persistence.jooq.tables.records.ChangeLogRecord;
import drylap.platform.RegularWork;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Seals the lines of the history, soon after they are written rather than as they are: whoever writes one waits for nobody. The order of the
 * seals is that in which lines were found, not that of their numbers.
 */
@Service
public final class HistorySeals implements RegularWork {
    private static final int MOST_AT_A_TIME = 2_000;
    private static final int NONCE_BYTES = 16;

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final SecureRandom random = new SecureRandom();

    HistorySeals(DSLContext db, TransactionTemplate transaction) {
        this.db = db;
        this.transaction = transaction;
    }

    /**
     * The newest seal: noted where nobody who can change the database can change it, it vouches for all before it.
     *
     * @param sha256 64 small letters and digits
     */
    public record Head(long seq, String sha256) {
        @Override
        public String toString() {
            return seq + ":" + sha256;
        }
    }

    @Override
    public String name() {
        return "history-seals";
    }

    @Override
    public Duration pause() {
        return Duration.ofMinutes(1);
    }

    @Override
    public void run() {
        int sealed = MOST_AT_A_TIME;
        while (sealed == MOST_AT_A_TIME) sealed = sealSome();
    }

    /** Empty where nothing was sealed yet. */
    public Optional<Head> head() {
        return head(db);
    }

    static Optional<Head> head(DSLContext db) {
        return db.selectFrom(HISTORY_SEAL)
                .orderBy(HISTORY_SEAL.SEQ.desc())
                .limit(1)
                .fetchOptional(row -> new Head(row.getSeq(), row.getSha256()));
    }

    private int sealSome() {
        return transaction.execute(_ -> {
            Head head = head().orElse(new Head(0, SealChain.START));
            var lines = db.selectFrom(CHANGE_LOG)
                    .where(DSL.notExists(
                            DSL.selectOne().from(HISTORY_SEAL).where(HISTORY_SEAL.CHANGE_ID.eq(CHANGE_LOG.ID))))
                    .orderBy(CHANGE_LOG.ID)
                    .limit(MOST_AT_A_TIME)
                    .fetch(HistorySeals::line);
            for (SealChain.Line line : lines) head = seal(head, line);
            return lines.size();
        });
    }

    /** Where another node seals at the same time, one of the two fails at the number and finds the lines sealed a minute later. */
    private Head seal(Head before, SealChain.Line line) {
        byte[] nonce = new byte[NONCE_BYTES];
        random.nextBytes(nonce);
        long seq = before.seq() + 1;
        String words = SealChain.words(nonce, line);
        String seal = SealChain.seal(before.sha256(), seq, line, words);
        db.insertInto(HISTORY_SEAL)
                .set(HISTORY_SEAL.SEQ, seq)
                .set(HISTORY_SEAL.CHANGE_ID, line.id())
                .set(HISTORY_SEAL.NONCE, nonce)
                .set(HISTORY_SEAL.WORDS_SHA256, words)
                .set(HISTORY_SEAL.SHA256, seal)
                .execute();
        return new Head(seq, seal);
    }

    static SealChain.Line line(ChangeLogRecord row) {
        return new SealChain.Line(
                row.getId(), row.getAt(), row.getPersonId(), row.getPerson(), row.getSite(), row.getWhat());
    }
}
