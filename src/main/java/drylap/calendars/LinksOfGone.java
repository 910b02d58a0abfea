package drylap.calendars;

import static drylap.persistence.jooq.Tables.CALENDAR_LINK;

import drylap.security.PersonGone;
import org.jooq.DSLContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Ends the calendar links that someone who is taken away has made: they have seen the secrets. */
@Component
record LinksOfGone(DSLContext db) {
    @EventListener
    void end(PersonGone gone) {
        db.update(CALENDAR_LINK)
                .set(CALENDAR_LINK.REVOKED_AT, gone.at())
                .set(CALENDAR_LINK.REVOKED_BY, gone.by().name())
                .where(CALENDAR_LINK.PERSON_ID.eq(gone.id().value()), CALENDAR_LINK.REVOKED_AT.isNull())
                .execute();
    }
}
