package drylap.hooks;

import static drylap.persistence.jooq.Tables.HOOK;

import drylap.security.PersonGone;
import org.jooq.DSLContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Ends the hooks of someone who is taken away, with them. */
@Component
record HooksOfGone(DSLContext db) {
    @EventListener
    void end(PersonGone gone) {
        db.update(HOOK)
                .set(HOOK.ENDED_AT, gone.at())
                .set(HOOK.ENDED_BY, gone.by().name())
                .where(HOOK.PERSON_ID.eq(gone.id().value()), HOOK.ENDED_AT.isNull())
                .execute();
    }
}
