package drylap.tokens;

import static drylap.persistence.jooq.Tables.API_TOKEN;

import drylap.security.PersonGone;
import org.jooq.DSLContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Ends the tokens of someone who is taken away, with them. */
@Component
record TokensOfGone(DSLContext db) {
    @EventListener
    void end(PersonGone gone) {
        db.update(API_TOKEN)
                .set(API_TOKEN.REVOKED_AT, gone.at())
                .set(API_TOKEN.REVOKED_BY, gone.by().name())
                .where(API_TOKEN.PERSON_ID.eq(gone.id().value()), API_TOKEN.REVOKED_AT.isNull())
                .execute();
    }
}
