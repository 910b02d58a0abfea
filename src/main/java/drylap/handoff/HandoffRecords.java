package drylap.handoff;

import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static drylap.persistence.jooq.Tables.HANDOFF_ENTRY;
import static drylap.persistence.jooq.Tables.HANDOFF_PHOTO;

import drylap.handoff.HandoffAct.Entry;
import drylap.handoff.HandoffAct.WaterTest;
import drylap.handoff.HandoffAct.Who;
import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.HandoffActRecord;
import drylap.security.Operation;
import drylap.security.Person;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** The acts as they were written down, each seen only by those whose site it is. */
@Service
public final class HandoffRecords {
    private final DSLContext db;

    HandoffRecords(DSLContext db) {
        this.db = db;
    }

    /** Newest first, at the person's sites. */
    public List<HandoffAct> of(Person who, FolderId folder, int atMost) {
        who.demand(Operation.SEE_HANDOFF_RECORD);
        return acts(HANDOFF_ACT.FOLDER_ID.eq(folder.value()).and(Within.reach(HANDOFF_ACT.SITE, who.reach())), atMost);
    }

    /** All of one opening, newest first. */
    public List<HandoffAct> of(Person who, FolderId folder, OpeningId opening) {
        who.demand(Operation.SEE_HANDOFF_RECORD);
        Condition ofOpening = HANDOFF_ACT.ID.in(db.select(HANDOFF_ENTRY.ACT_ID)
                .from(HANDOFF_ENTRY)
                .where(HANDOFF_ENTRY.FOLDER_ID.eq(folder.value()), HANDOFF_ENTRY.OPENING.eq(opening.value())));
        return acts(ofOpening.and(Within.reach(HANDOFF_ACT.SITE, who.reach())), Integer.MAX_VALUE);
    }

    /** Empty where there is none, or where it belongs to a site that is not the person's. */
    public Optional<HandoffAct> find(Person who, long id) {
        who.demand(Operation.SEE_HANDOFF_RECORD);
        return acts(HANDOFF_ACT.ID.eq(id).and(Within.reach(HANDOFF_ACT.SITE, who.reach())), 1).stream()
                .findFirst();
    }

    HandoffAct act(long id) {
        return acts(HANDOFF_ACT.ID.eq(id), 1).getFirst();
    }

    private List<HandoffAct> acts(Condition which, int atMost) {
        var heads = db.selectFrom(HANDOFF_ACT)
                .where(which)
                .orderBy(HANDOFF_ACT.ID.desc())
                .limit(atMost)
                .fetch();
        List<Long> ids = heads.getValues(HANDOFF_ACT.ID);
        var entries = entries(ids);
        var photos = photos(ids);
        return heads.map(head ->
                act(head, entries.getOrDefault(head.getId(), List.of()), photos.getOrDefault(head.getId(), List.of())));
    }

    private Map<Long, List<Entry>> entries(List<Long> acts) {
        return db.selectFrom(HANDOFF_ENTRY)
                .where(HANDOFF_ENTRY.ACT_ID.in(acts))
                .orderBy(HANDOFF_ENTRY.ACT_ID, HANDOFF_ENTRY.OPENING)
                .fetchGroups(
                        HANDOFF_ENTRY.ACT_ID,
                        row -> new Entry(
                                new OpeningId(row.getOpening()), row.getRating(), row.getState(), row.getLastMark()));
    }

    private Map<Long, List<UUID>> photos(List<Long> acts) {
        return db.selectFrom(HANDOFF_PHOTO)
                .where(HANDOFF_PHOTO.ACT_ID.in(acts))
                .orderBy(HANDOFF_PHOTO.ACT_ID, HANDOFF_PHOTO.PHOTO_ID)
                .fetchGroups(HANDOFF_PHOTO.ACT_ID, HANDOFF_PHOTO.PHOTO_ID);
    }

    private static HandoffAct act(HandoffActRecord row, List<Entry> entries, List<UUID> photos) {
        return new HandoffAct(
                row.getId(),
                new SiteId(row.getSite()),
                Coded.of(ActKind.class, row.getKind()),
                Codes.read(HoldPoint.class, row.getHoldPoint()),
                new Who(row.getPerson(), row.getRole(), row.getCrew()),
                row.getAt(),
                Codes.read(ReturnReason.class, row.getReason()),
                row.getNote(),
                test(row),
                entries,
                photos);
    }

    private static @Nullable WaterTest test(HandoffActRecord row) {
        var leak = Codes.read(LeakDefinition.class, row.getLeakDefinition());
        return leak == null ? null : new WaterTest(leak, row.getPressurePa(), row.getMinutes());
    }
}
