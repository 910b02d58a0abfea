package drylap.calendars;

import static drylap.persistence.jooq.Tables.CALENDAR;
import static drylap.persistence.jooq.Tables.CALENDAR_ENTRY;

import drylap.kernel.CrewId;
import drylap.kernel.Reading;
import org.jooq.Condition;

/** Of which crew a calendar tells, and how those read who follow it. */
record Voice(CrewId crew, Reading reading) {
    String language() {
        return reading.language().code();
    }

    String ruler() {
        return reading.ruler().code();
    }

    Condition ofCalendar() {
        return CALENDAR.CREW
                .eq(crew.value())
                .and(CALENDAR.LANGUAGE.eq(language()))
                .and(CALENDAR.RULER.eq(ruler()));
    }

    Condition ofEntries() {
        return CALENDAR_ENTRY
                .CREW
                .eq(crew.value())
                .and(CALENDAR_ENTRY.LANGUAGE.eq(language()))
                .and(CALENDAR_ENTRY.RULER.eq(ruler()));
    }
}
