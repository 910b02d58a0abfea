package drylap.tokens;

import static drylap.persistence.jooq.Tables.API_TOKEN;

import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.ProgramPrincipal;
import drylap.security.Secret;
import drylap.security.SignIns;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The tokens of other programs. Everybody makes and revokes their own; an administrator those of everybody. A program never makes
 * one: who acts must be there in person.
 */
@Service
public final class ApiTokens {
    /** Makes a token that was left lying around easy to find by those who search for such. */
    private static final String BEGINNING = "drylap_";

    private static final Duration USE_IS_NOTED_EVERY = Duration.ofMinutes(1);

    private final DSLContext db;
    private final TokenRows rows;
    private final SignIns people;
    private final TransactionTemplate transaction;
    private final History history;
    private final Clock clock;

    ApiTokens(
            DSLContext db,
            TokenRows rows,
            SignIns people,
            TransactionTemplate transaction,
            History history,
            Clock clock) {
        this.db = db;
        this.rows = rows;
        this.people = people;
        this.transaction = transaction;
        this.history = history;
        this.clock = clock;
    }

    /** @throws IllegalArgumentException where it cannot be, with what would be accepted */
    public NewToken make(Person who, TokenRequest asked) {
        who.demandInPerson(asked.person());
        asked.problem(clock.instant()).ifPresent(words -> {
            throw new Unfit(words);
        });
        var owner = people.active(asked.person())
                .orElseThrow(() -> new Unfit(Saying.of("there is no such person, or they may not sign in")));
        String secret = BEGINNING + Secret.random();
        return transaction.execute(_ -> {
            long id = rows.add(asked, Secret.hash(secret), who.name(), clock.instant());
            history.note(who, null, "made token \"%s\" for programs of %s".formatted(asked.name(), owner.name()));
            return new NewToken(rows.find(id).orElseThrow(), secret);
        });
    }

    /**
     * Ends a token: from now on it opens nothing.
     *
     * @return whether it was this call that revoked it; someone else may have been quicker, or there is no such token
     */
    public boolean revoke(Person who, long id) {
        var token = rows.find(id);
        if (token.isEmpty()) {
            who.demand(Operation.CHANGE_PEOPLE);
            return false;
        }
        who.demandInPerson(token.get().person());
        return transaction.execute(_ -> {
            int revoked = db.update(API_TOKEN)
                    .set(API_TOKEN.REVOKED_AT, clock.instant())
                    .set(API_TOKEN.REVOKED_BY, who.name())
                    .where(API_TOKEN.ID.eq(id), API_TOKEN.REVOKED_AT.isNull())
                    .execute();
            if (revoked == 1)
                history.note(
                        who,
                        null,
                        "revoked token \"%s\" of %s"
                                .formatted(token.get().name(), token.get().personName()));
            return revoked == 1;
        });
    }

    /** One's own, newest first; for whoever manages people, everybody's. */
    public List<ApiToken> seenBy(Person who) {
        return rows.all(who.may(Operation.SEE_PEOPLE) ? Optional.empty() : Optional.of(who.id()));
    }

    /** Who a secret lets in; nobody where it is unknown, revoked or expired. That it was used is noted to the minute. */
    public Optional<ProgramPrincipal> open(String secret) {
        if (!secret.startsWith(BEGINNING)) return Optional.empty();
        Instant now = clock.instant();
        var token = rows.bySecret(Secret.hash(secret)).filter(one -> one.inUse(now));
        token.filter(one -> one.usedAt() == null || one.usedAt().isBefore(now.minus(USE_IS_NOTED_EVERY)))
                .ifPresent(one -> db.update(API_TOKEN)
                        .set(API_TOKEN.USED_AT, now)
                        .where(API_TOKEN.ID.eq(one.id()))
                        .execute());
        return token.map(
                one -> new ProgramPrincipal(one.id(), one.person(), Scope.operations(one.scopes()), one.reach()));
    }
}
