package drylap.security;

import static drylap.persistence.jooq.Tables.SIGN_IN_FAILURE;
import static org.jooq.impl.DSL.function;
import static org.jooq.impl.DSL.inline;
import static org.jooq.impl.DSL.val;

import drylap.kernel.PersonId;
import drylap.persistence.jooq.tables.records.PersonRecord;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Lets people in by name and password, and makes those wait who guess. All nodes count together. */
@Service
public final class SignIns {
    static final int FAILURES_OF_A_NAME = 5;
    static final int FAILURES_OF_AN_ADDRESS = 20;
    static final Duration WITHIN = Duration.ofMinutes(15);
    /** However busy, whoever came in so long ago shows their password again (OWASP ASVS 4.0.3, 3.3.2). */
    static final Duration LONGEST_SESSION = Duration.ofHours(12);
    /** A password that somebody else set lets its person in for so long, to choose one of their own (OWASP ASVS 4.0.3, 2.3.1). */
    public static final int GIVEN_DAYS = 7;

    private static final Logger LOG = LoggerFactory.getLogger(SignIns.class);
    private static final int LONGEST_NAME = 80;
    /** Two kinds of keys of PostgreSQL's advisory locks, always taken in this order. */
    private static final int ADDRESS_LOCK = 4_001;

    private static final int NAME_LOCK = 4_002;

    private final DSLContext db;
    private final PersonRows rows;
    private final TransactionTemplate transaction;
    private final Clock clock;

    SignIns(DSLContext db, PersonRows rows, TransactionTemplate transaction, Clock clock) {
        this.db = db;
        this.rows = rows;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** What came of a try; that a name exists is never told. */
    public sealed interface Outcome {
        record In(PersonId id, String signInName) implements Outcome {}

        record WrongNameOrPassword() implements Outcome {}

        /** Too many failures of late; the password was not looked at. */
        record Wait(Duration atMost) implements Outcome {}

        /** It is the password, but somebody else set it longer ago than {@link #GIVEN_DAYS}. */
        record RanOut() implements Outcome {}
    }

    public Outcome enter(String signInName, String password, String address) {
        return look(plain(signInName), password, address);
    }

    /** Whether this is the password of somebody who is in already; it may not be guessed oftener than at the door. */
    public Outcome confirm(PersonId id, String password) {
        return rows.byId(id)
                .map(row -> look(plain(row.getSignInName()), password, "session of person " + id.value()))
                .orElseGet(Outcome.WrongNameOrPassword::new);
    }

    private Outcome look(String name, String password, String address) {
        if (!mayTry(name, address)) {
            LOG.warn("Sign-in not looked at after too many failures, from {}", address);
            return new Outcome.Wait(WITHIN);
        }
        var row = rows.byName(name);
        var hash = row.filter(person -> person.getActive()).map(person -> person.getPasswordHash());
        // by number: whoever types their password where the name goes does not find it in the log
        String who = row.map(person -> "person " + person.getId()).orElse("nobody of that name");
        if (!Passwords.matches(password, hash)) {
            LOG.warn("Sign-in refused: {}, from {}", who, address);
            return new Outcome.WrongNameOrPassword();
        }
        db.deleteFrom(SIGN_IN_FAILURE).where(SIGN_IN_FAILURE.NAME.eq(name)).execute();
        if (row.filter(this::ranOut).isPresent()) {
            LOG.warn("Sign-in refused: {}, whose password was set for them too long ago, from {}", who, address);
            return new Outcome.RanOut();
        }
        LOG.info("Signed in: {}, from {}", who, address);
        return new Outcome.In(
                new PersonId(row.orElseThrow().getId()), row.orElseThrow().getSignInName());
    }

    private boolean ranOut(PersonRecord person) {
        Instant given = person.getPasswordGivenAt();
        return given != null && !clock.instant().isBefore(given.plus(Duration.ofDays(GIVEN_DAYS)));
    }

    /** The person as they are now; empty where they may not go on: gone, signed off, or signed out since. */
    public Optional<Person> current(PersonId id, Instant signedInAt) {
        return rows.byId(id)
                .filter(row -> row.getActive())
                .filter(row ->
                        row.getSignedOutAt() == null || row.getSignedOutAt().isBefore(signedInAt))
                .filter(_ -> clock.instant().isBefore(signedInAt.plus(LONGEST_SESSION)))
                .map(this::inSession);
    }

    private Person inSession(PersonRecord row) {
        var person = rows.person(row);
        return row.getPasswordGivenAt() == null ? person : person.choosingPassword();
    }

    /** The person as they are now, for what acts for them without a session; empty where they are gone or signed off. */
    public Optional<Person> active(PersonId id) {
        return rows.byId(id).filter(row -> row.getActive()).map(rows::person);
    }

    Instant now() {
        return clock.instant();
    }

    /**
     * Counts a try as a failure before its password is looked at, one after another: of many at once no more are looked at than of many one by
     * one. Whoever is let in takes theirs back.
     */
    private boolean mayTry(String name, String address) {
        return Boolean.TRUE.equals(transaction.execute(_ -> {
            lock(ADDRESS_LOCK, address);
            lock(NAME_LOCK, name);
            if (mustWait(name, address)) return false;
            noteFailure(name, address);
            return true;
        }));
    }

    private void lock(int kind, String key) {
        var hash = function("hashtext", Integer.class, val(key));
        db.select(function("pg_advisory_xact_lock", String.class, inline(kind), hash))
                .fetch();
    }

    /** Without letters that no name has and PostgreSQL does not take, and no longer than a name may be. */
    private static String plain(String signInName) {
        String plain = signInName.replaceAll("\\p{Cntrl}", "").strip().toLowerCase(Locale.ROOT);
        return plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
    }

    private boolean mustWait(String name, String address) {
        var recent = SIGN_IN_FAILURE.AT.gt(clock.instant().minus(WITHIN));
        return db.fetchCount(SIGN_IN_FAILURE, recent.and(SIGN_IN_FAILURE.NAME.eq(name))) >= FAILURES_OF_A_NAME
                || db.fetchCount(SIGN_IN_FAILURE, recent.and(SIGN_IN_FAILURE.ADDRESS.eq(address)))
                        >= FAILURES_OF_AN_ADDRESS;
    }

    private void noteFailure(String name, String address) {
        db.deleteFrom(SIGN_IN_FAILURE)
                .where(SIGN_IN_FAILURE.AT.lt(clock.instant().minus(WITHIN)))
                .execute();
        db.insertInto(SIGN_IN_FAILURE)
                .set(SIGN_IN_FAILURE.NAME, name)
                .set(SIGN_IN_FAILURE.ADDRESS, address)
                .set(SIGN_IN_FAILURE.AT, clock.instant())
                .execute();
    }
}
