package drylap.security;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static drylap.persistence.jooq.Tables.HISTORY_SEAL;
import static drylap.persistence.jooq.Tables.HISTORY_WORDS_GONE;

import drylap.kernel.Sha256;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.List;
import java.util.stream.Collectors;
import org.jooq.DSLContext;

/**
 * Lines of the history that a name is taken out of. The seal of a line holds a digest of its words, not the words, so that the chain holds
 * without them; what is left of the words has a digest of its own, and the act's line, which is sealed as any, one over all of those.
 */
final class HistoryWords {
    private static final int NONCE_BYTES = 16;

    private final DSLContext db;
    private final List<Long> lines;

    /** A line whose words are gone, and what is checked in their place. */
    record Gone(long changeId, String wordsSha256) {}

    private HistoryWords(DSLContext db, List<Long> lines) {
        this.db = db;
        this.lines = lines;
    }

    /**
     * Before the names are taken out: which sealed lines hold one. Whoever seals or writes a line waits until the transaction ends, in the
     * order in which sealing takes the tables.
     */
    static HistoryWords holding(DSLContext db, long person) {
        db.execute("lock table history_seal, change_log in access exclusive mode");
        return new HistoryWords(db, db.fetch("""
                                select c.id from change_log c join history_seal s on s.change_id = c.id
                                where name_taken_out(c.what) <> c.what
                                    or (c.person_id is null or c.person_id = ?) and name_taken_out(c.person) <> c.person
                                order by c.id""", person).getValues(0, Long.class));
    }

    int size() {
        return lines.size();
    }

    /** After they are: the words that are left get their digests. The answer is the one over all of those. */
    String keep(long act) {
        var random = new SecureRandom();
        for (var row : db.selectFrom(CHANGE_LOG).where(CHANGE_LOG.ID.in(lines)).fetch()) {
            byte[] nonce = new byte[NONCE_BYTES];
            random.nextBytes(nonce);
            db.insertInto(HISTORY_WORDS_GONE)
                    .set(HISTORY_WORDS_GONE.CHANGE_ID, row.getId())
                    .set(HISTORY_WORDS_GONE.ACT_ID, act)
                    .set(HISTORY_WORDS_GONE.NONCE, nonce)
                    .set(HISTORY_WORDS_GONE.WORDS_SHA256, SealChain.words(nonce, HistorySeals.line(row)))
                    .execute();
        }
        forgetNonces(act);
        return digest(db.selectFrom(HISTORY_WORDS_GONE)
                .where(HISTORY_WORDS_GONE.ACT_ID.eq(act))
                .orderBy(HISTORY_WORDS_GONE.CHANGE_ID)
                .fetch(row -> new Gone(row.getChangeId(), row.getWordsSha256())));
    }

    /** With the bytes that were drawn for words which are gone, whoever guesses the words could see that the guess is right. */
    private void forgetNonces(long act) {
        byte[] none = new byte[NONCE_BYTES];
        db.update(HISTORY_SEAL)
                .set(HISTORY_SEAL.NONCE, none)
                .where(HISTORY_SEAL.CHANGE_ID.in(lines))
                .execute();
        db.update(HISTORY_WORDS_GONE)
                .set(HISTORY_WORDS_GONE.NONCE, none)
                .where(HISTORY_WORDS_GONE.CHANGE_ID.in(lines), HISTORY_WORDS_GONE.ACT_ID.ne(act))
                .execute();
    }

    /** @param rows of one act, by number of their lines */
    static String digest(List<Gone> rows) {
        var digest = Sha256.begun();
        digest.update(rows.stream()
                .map(row -> row.changeId() + " " + row.wordsSha256())
                .collect(Collectors.joining("\n"))
                .getBytes(StandardCharsets.UTF_8));
        return Sha256.hex(digest);
    }
}
