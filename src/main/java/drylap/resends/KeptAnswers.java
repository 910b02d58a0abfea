package drylap.resends;

import static drylap.persistence.jooq.Tables.KEPT_ANSWER;

import drylap.persistence.jooq.tables.records.KeptAnswerRecord;
import drylap.platform.RegularWork;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import java.util.Objects;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Keeps answers by sender and key. */
@Service
public final class KeptAnswers implements RegularWork {
    /** Longer than any program goes on trying, and over a night on which nobody looks. */
    public static final Duration KEPT = Duration.ofHours(48);

    private final DSLContext db;
    private final Clock clock;

    KeptAnswers(DSLContext db, Clock clock) {
        this.db = db;
        this.clock = clock;
    }

    /**
     * Enters a key, in the caller's transaction. Where another transaction has entered it, this waits for its end; what that one took
     * back was never sent.
     *
     * @param sender who sends: a key is the sender's own
     * @param hash SHA-256 over all of the request that decides what it does
     */
    public Sending enter(String sender, String key, byte[] hash) {
        boolean first = db.insertInto(KEPT_ANSWER)
                        .set(KEPT_ANSWER.SENDER, sender)
                        .set(KEPT_ANSWER.KEY, key)
                        .set(KEPT_ANSWER.REQUEST_HASH, hash)
                        .set(KEPT_ANSWER.AT, clock.instant())
                        .onConflictDoNothing()
                        .execute()
                == 1;
        if (first) return new Sending.First();
        var before = db.fetchSingle(KEPT_ANSWER, KEPT_ANSWER.SENDER.eq(sender), KEPT_ANSWER.KEY.eq(key));
        return Arrays.equals(before.getRequestHash(), hash)
                ? new Sending.Again(answer(before))
                : new Sending.AnotherRequest();
    }

    /** Keeps the answer to a key that was entered in the same transaction. */
    public void keep(String sender, String key, KeptAnswer answer) {
        db.update(KEPT_ANSWER)
                .set(KEPT_ANSWER.STATUS, answer.status())
                .set(KEPT_ANSWER.CONTENT_TYPE, answer.contentType())
                .set(KEPT_ANSWER.ETAG, answer.etag())
                .set(KEPT_ANSWER.LOCATION, answer.location())
                .set(KEPT_ANSWER.BODY, answer.body())
                .where(KEPT_ANSWER.SENDER.eq(sender), KEPT_ANSWER.KEY.eq(key))
                .execute();
    }

    @Override
    public String name() {
        return "old-answers";
    }

    @Override
    public Duration pause() {
        return Duration.ofHours(1);
    }

    @Override
    public void run() {
        db.deleteFrom(KEPT_ANSWER)
                .where(KEPT_ANSWER.AT.lt(clock.instant().minus(KEPT)))
                .execute();
    }

    private static KeptAnswer answer(KeptAnswerRecord row) {
        return new KeptAnswer(
                Objects.requireNonNull(row.getStatus(), "the transaction that entered the key kept no answer"),
                row.getContentType(),
                row.getEtag(),
                row.getLocation(),
                Objects.requireNonNullElse(row.getBody(), new byte[0]));
    }
}
