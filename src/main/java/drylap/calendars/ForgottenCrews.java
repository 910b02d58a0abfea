package drylap.calendars;

import static drylap.persistence.jooq.Tables.CALENDAR;
import static drylap.persistence.jooq.Tables.CALENDAR_ENTRY;
import static drylap.persistence.jooq.Tables.CALENDAR_LINK;

import drylap.kernel.CrewId;
import java.util.Collection;
import java.util.List;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Takes away the calendars and links of crews that never were. */
@Service
public final class ForgottenCrews {
    private final DSLContext db;

    ForgottenCrews(DSLContext db) {
        this.db = db;
    }

    /** Joins the caller's transaction. Phones that follow such a link find nothing any more. */
    public void forget(Collection<CrewId> crews) {
        List<String> names = crews.stream().map(CrewId::value).toList();
        db.deleteFrom(CALENDAR_ENTRY).where(CALENDAR_ENTRY.CREW.in(names)).execute();
        db.deleteFrom(CALENDAR).where(CALENDAR.CREW.in(names)).execute();
        db.deleteFrom(CALENDAR_LINK).where(CALENDAR_LINK.CREW.in(names)).execute();
    }
}
