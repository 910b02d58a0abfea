package drylap.security;

import static drylap.persistence.jooq.Tables.SIGN_IN_FAILURE;

import drylap.kernel.PersonId;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Lets people in by name and password, and makes those wait who guess. All nodes count together. */
@Service
public final class SignIns {
    static final int FAILURES_OF_A_NAME = 5;
    static final int FAILURES_OF_AN_ADDRESS = 20;
    static final Duration WITHIN = Duration.ofMinutes(15);

    private final DSLContext db;
    private final PersonRows rows;
    private final Clock clock;

    SignIns(DSLContext db, PersonRows rows, Clock clock) {
        this.db = db;
        this.rows = rows;
        this.clock = clock;
    }

    /** What came of a try; that a name exists is never told. */
    public sealed interface Outcome {
        record In(PersonId id, String signInName) implements Outcome {}

        record WrongNameOrPassword() implements Outcome {}

        /** Too many failures of late; the password was not looked at. */
        record Wait(Duration atMost) implements Outcome {}
    }

    public Outcome enter(String signInName, String password, String address) {
        String name = signInName.strip().toLowerCase(Locale.ROOT);
        if (mustWait(name, address)) return new Outcome.Wait(WITHIN);
        var row = rows.byName(name);
        var hash = row.filter(person -> person.getActive()).map(person -> person.getPasswordHash());
        if (!Passwords.matches(password, hash)) {
            noteFailure(name, address);
            return new Outcome.WrongNameOrPassword();
        }
        db.deleteFrom(SIGN_IN_FAILURE).where(SIGN_IN_FAILURE.NAME.eq(name)).execute();
        return new Outcome.In(
                new PersonId(row.orElseThrow().getId()), row.orElseThrow().getSignInName());
    }

    /** The person as they are now; empty where they may not go on: gone, signed off, or signed out since. */
    public Optional<Person> current(PersonId id, Instant signedInAt) {
        return rows.byId(id)
                .filter(row -> row.getActive())
                .filter(row ->
                        row.getSignedOutAt() == null || row.getSignedOutAt().isBefore(signedInAt))
                .map(rows::person);
    }

    /** The person as they are now, for what acts for them without a session; empty where they are gone or signed off. */
    public Optional<Person> active(PersonId id) {
        return rows.byId(id).filter(row -> row.getActive()).map(rows::person);
    }

    /** Whether this is the person's password. */
    public boolean confirms(PersonId id, String password) {
        return Passwords.matches(password, rows.byId(id).map(person -> person.getPasswordHash()));
    }

    Instant now() {
        return clock.instant();
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
                .set(SIGN_IN_FAILURE.NAME, name.length() > 80 ? name.substring(0, 80) : name)
                .set(SIGN_IN_FAILURE.ADDRESS, address)
                .set(SIGN_IN_FAILURE.AT, clock.instant())
                .execute();
    }
}
