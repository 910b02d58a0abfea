package drylap.calendars;

import static drylap.persistence.jooq.Tables.CALENDAR;
import static drylap.persistence.jooq.Tables.CALENDAR_ENTRY;

import drylap.kernel.GeoPoint;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.CalendarEntryRecord;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** The entries of calendars as rows. */
@Service
final class Entries {
    private final DSLContext db;

    Entries(DSLContext db) {
        this.db = db;
    }

    /** Up to which publication the crew's calendar has been told, 0 for none; nobody else tells it before the transaction ends. */
    long hold(Voice voice) {
        db.insertInto(CALENDAR)
                .set(CALENDAR.CREW, voice.crew().value())
                .set(CALENDAR.LANGUAGE, voice.language())
                .set(CALENDAR.RULER, voice.ruler())
                .set(CALENDAR.TOLD, 0L)
                .onConflictDoNothing()
                .execute();
        return db.select(CALENDAR.TOLD)
                .from(CALENDAR)
                .where(voice.ofCalendar())
                .forUpdate()
                .fetchSingle(CALENDAR.TOLD);
    }

    void toldUpTo(Voice voice, long publication) {
        db.update(CALENDAR)
                .set(CALENDAR.TOLD, publication)
                .where(voice.ofCalendar())
                .execute();
    }

    Map<Stay.Key, Entry> of(Voice voice) {
        return db.selectFrom(CALENDAR_ENTRY)
                .where(voice.ofEntries())
                .fetchMap(row -> new Stay.Key(row.getDate(), new SiteId(row.getSite()), row.getStay()), Entries::entry);
    }

    /** Those that end, or were cancelled, after a moment, at sites within reach; in order of time. */
    List<Entry> after(Voice voice, Instant moment, Reach reach) {
        return db.selectFrom(CALENDAR_ENTRY)
                .where(voice.ofEntries(), Within.reach(CALENDAR_ENTRY.SITE, reach))
                .and(CALENDAR_ENTRY.ENDS_AT.gt(moment))
                .and(CALENDAR_ENTRY.CANCELLED_AT.isNull().or(CALENDAR_ENTRY.CANCELLED_AT.gt(moment)))
                .orderBy(CALENDAR_ENTRY.STARTS_AT, CALENDAR_ENTRY.UID)
                .fetch(Entries::entry);
    }

    void add(Voice voice, Stay.Key key, Told told, Instant at) {
        CalendarEntryRecord row = db.newRecord(CALENDAR_ENTRY);
        row.setCrew(voice.crew().value());
        row.setLanguage(voice.language());
        row.setRuler(voice.ruler());
        row.setDate(key.date());
        row.setSite(key.site().value());
        row.setStay(key.number());
        row.setUid(UUID.randomUUID());
        row.setSequence(0);
        fill(row, told, at, null);
        db.insertInto(CALENDAR_ENTRY).set(row).execute();
    }

    void change(Entry entry, Told told, Instant at, @Nullable Instant cancelledAt) {
        CalendarEntryRecord row = db.newRecord(CALENDAR_ENTRY);
        row.setSequence(entry.sequence() + 1);
        fill(row, told, at, cancelledAt);
        db.update(CALENDAR_ENTRY)
                .set(row)
                .where(CALENDAR_ENTRY.UID.eq(entry.uid()))
                .execute();
    }

    private static void fill(CalendarEntryRecord row, Told told, Instant at, @Nullable Instant cancelledAt) {
        row.setStartsAt(told.start());
        row.setEndsAt(told.end());
        row.setSummary(told.summary());
        row.setPlace(told.place());
        row.setLatitude(told.where().latitude());
        row.setLongitude(told.where().longitude());
        row.setDescription(told.description());
        row.setChangedAt(at);
        row.setCancelledAt(cancelledAt);
    }

    private static Entry entry(CalendarEntryRecord row) {
        return new Entry(
                row.getUid(),
                new SiteId(row.getSite()),
                row.getSequence(),
                new Told(
                        row.getStartsAt(),
                        row.getEndsAt(),
                        row.getSummary(),
                        row.getPlace(),
                        new GeoPoint(row.getLatitude(), row.getLongitude()),
                        row.getDescription()),
                row.getChangedAt(),
                row.getCancelledAt());
    }
}
