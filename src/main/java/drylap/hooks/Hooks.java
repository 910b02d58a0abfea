package drylap.hooks;

import static drylap.persistence.jooq.Tables.HOOK;

import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.Secret;
import drylap.security.SignIns;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The hooks of other programs. Everybody makes and ends their own; an administrator those of everybody. No program does. */
@Service
public final class Hooks {
    private final DSLContext db;
    private final HookRows rows;
    private final SignIns people;
    private final HookSettings settings;
    private final TransactionTemplate transaction;
    private final History history;
    private final Clock clock;

    Hooks(
            DSLContext db,
            HookRows rows,
            SignIns people,
            HookSettings settings,
            TransactionTemplate transaction,
            History history,
            Clock clock) {
        this.db = db;
        this.rows = rows;
        this.people = people;
        this.settings = settings;
        this.transaction = transaction;
        this.history = history;
        this.clock = clock;
    }

    /** @throws IllegalArgumentException where it cannot be, with what would be accepted */
    public NewHook make(Person who, HookRequest asked) {
        who.demandInPerson(asked.owner());
        asked.problem()
                .or(() -> HookAddress.against(asked.url(), settings.insideAllowed()))
                .ifPresent(words -> {
                    throw new Unfit(words);
                });
        var owner = people.active(asked.owner())
                .orElseThrow(() -> new Unfit(Saying.of("there is no such person, or they may not sign in")));
        String secret = Secret.random();
        return transaction.execute(_ -> {
            long id = rows.add(asked, secret, who.name(), clock.instant());
            history.note(who, null, "made hook \"%s\" for programs of %s".formatted(asked.name(), owner.name()));
            return new NewHook(rows.find(id).orElseThrow().hook(), secret);
        });
    }

    /**
     * Ends a hook: from now on it is told nothing, and what waits to be told it is dropped.
     *
     * @return whether it was this call that ended it
     */
    public boolean end(Person who, long id) {
        var found = rows.find(id);
        if (found.isEmpty()) {
            who.demand(Operation.CHANGE_PEOPLE);
            return false;
        }
        var hook = found.get().hook();
        who.demandInPerson(hook.owner());
        return transaction.execute(_ -> {
            int ended = db.update(HOOK)
                    .set(HOOK.ENDED_AT, clock.instant())
                    .set(HOOK.ENDED_BY, who.name())
                    .where(HOOK.ID.eq(id), HOOK.ENDED_AT.isNull())
                    .execute();
            if (ended == 1) history.note(who, null, "ended hook \"%s\" of %s".formatted(hook.name(), hook.ownerName()));
            return ended == 1;
        });
    }

    /** One's own that are in use, newest first; for whoever manages people, everybody's. */
    public List<Hook> seenBy(Person who) {
        return rows.inUse(who.may(Operation.SEE_PEOPLE) ? Optional.empty() : Optional.of(who.id())).stream()
                .map(HookRows.Row::hook)
                .toList();
    }
}
