package drylap.security;

import static drylap.persistence.jooq.Tables.PERSON_TAKEN_AWAY;
import static drylap.persistence.jooq.Tables.SIGN_IN_FAILURE;

import drylap.kernel.ChangedMeanwhile;
import drylap.kernel.Coded;
import drylap.kernel.PersonId;
import drylap.persistence.jooq.tables.records.PersonRecord;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.TakingAway.Rows;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jooq.DSLContext;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Takes someone away for good: their name becomes a number in all that is kept, and nothing lets them in any more. What they did stays, with
 * its place, time and seal.
 */
@Service
public final class PeopleTakenAway {
    private final DSLContext db;
    private final PersonRows rows;
    private final TransactionTemplate transaction;
    private final Told told;
    private final Clock clock;

    /** Who hears of it. */
    @Service
    record Told(History history, News news, ApplicationEventPublisher events) {}

    PeopleTakenAway(DSLContext db, PersonRows rows, TransactionTemplate transaction, Told told, Clock clock) {
        this.db = db;
        this.rows = rows;
        this.transaction = transaction;
        this.told = told;
        this.clock = clock;
    }

    /**
     * What taking them away would change: it is done and taken back, so that it is exactly that.
     *
     * @throws IllegalArgumentException where they cannot be taken away, with the reason
     */
    public TakingAway preview(Person who, PersonId id) {
        return transaction.execute(status -> {
            status.setRollbackOnly();
            return take(who, checked(who, id));
        });
    }

    /**
     * @param version of what the asker has seen of the person
     * @throws ChangedMeanwhile where they are another by now; nothing was changed
     * @throws IllegalArgumentException where they cannot be taken away, with the reason
     */
    public TakingAway takeAway(Person who, PersonId id, int version) {
        var taken = transaction.execute(_ -> {
            var person = checked(who, id);
            if (person.getVersion() != version) throw new ChangedMeanwhile(person.getName());
            return take(who, person);
        });
        told.news().tell(new NewsItem(People.TOPIC, 0, null, ""));
        return taken;
    }

    private PersonRecord checked(Person who, PersonId id) {
        who.demand(Operation.CHANGE_PEOPLE);
        if (who.id().equals(id))
            throw new Unfit(Saying.of("nobody takes themselves away: ask somebody else who manages people"));
        int administrators = rows.activeAdministrators();
        var person = rows.byId(id).orElseThrow(() -> new Unfit(Saying.of("there is no such person")));
        if (person.getTakenAway()) throw new Unfit(Saying.of("{0} was taken away before", person.getName()));
        boolean one =
                person.getActive() && Coded.of(Role.class, person.getRole()).managesPeople();
        if (one && administrators == 1)
            throw new Unfit(Saying.of("{0} is the last administrator: name another one first", person.getName()));
        return person;
    }

    private TakingAway take(Person who, PersonRecord person) {
        var id = new PersonId(person.getId());
        told.events().publishEvent(new PersonGone(id, who, clock.instant()));
        var going = new GoingNames(db, id, person.getName());
        int namesakes = rows.namesakes(id, person.getName());
        rows.takeAway(id, TakingAway.placeholder(id), clock.instant());
        forgetTries(person.getSignInName());
        going.tell();
        var changed = takeOut(who, id, going);
        return new TakingAway(
                id,
                person.getName(),
                TakingAway.placeholder(id),
                going.names().subList(1, going.names().size()),
                changed,
                going.staying(),
                namesakes);
    }

    private List<Rows> takeOut(Person who, PersonId id, GoingNames going) {
        long act = db.insertInto(PERSON_TAKEN_AWAY)
                .set(PERSON_TAKEN_AWAY.PERSON_ID, id.value())
                .returning(PERSON_TAKEN_AWAY.ID)
                .fetchSingle(PERSON_TAKEN_AWAY.ID);
        List<Rows> changed = new ArrayList<>(List.of(new Rows("person", 1)));
        changed.addAll(going.takeOut());
        // last, as everybody writes it last: nobody who waits for it holds what is waited for here
        var words = HistoryWords.holding(db, id.value());
        long lines = going.takeOutOfHistory();
        if (lines > 0) changed.add(new Rows("change_log", lines));
        String digest = words.keep(act);
        told.history()
                .note(who, null, SealCheck.TAKEN_AWAY.formatted(TakingAway.placeholder(id), words.size(), digest));
        return changed;
    }

    private void forgetTries(String signInName) {
        db.deleteFrom(SIGN_IN_FAILURE)
                .where(SIGN_IN_FAILURE.NAME.eq(signInName.toLowerCase(Locale.ROOT)))
                .execute();
    }
}
