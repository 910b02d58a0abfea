package drylap.handoff;

import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static drylap.persistence.jooq.Tables.HANDOFF_ENTRY;

import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.persistence.Within;
import java.util.List;
import java.util.Map;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.springframework.stereotype.Service;

/** In whose hands each opening is: that of the newest act that moved it. */
@Service
public final class Custodies {
    private static final List<String> MOVES =
            List.of(ActKind.RELEASED.code(), ActKind.ACCEPTED.code(), ActKind.RETURNED.code());

    private final DSLContext db;

    Custodies(DSLContext db) {
        this.db = db;
    }

    /** Only openings that were ever released, at sites within reach. */
    public Map<OpeningId, Custody> of(FolderId folder, Reach reach) {
        return newest(folder, Within.reach(HANDOFF_ACT.SITE, reach));
    }

    public Custody of(FolderId folder, OpeningId opening) {
        return newest(folder, HANDOFF_ENTRY.OPENING.eq(opening.value())).getOrDefault(opening, Custody.UNRELEASED);
    }

    private Map<OpeningId, Custody> newest(FolderId folder, Condition which) {
        return db.select(
                        HANDOFF_ENTRY.OPENING,
                        HANDOFF_ACT.ID,
                        HANDOFF_ACT.KIND,
                        HANDOFF_ACT.AT,
                        HANDOFF_ACT.PERSON,
                        HANDOFF_ACT.REASON,
                        HANDOFF_ACT.NOTE)
                .distinctOn(HANDOFF_ENTRY.OPENING)
                .from(HANDOFF_ENTRY)
                .join(HANDOFF_ACT)
                .on(HANDOFF_ACT.ID.eq(HANDOFF_ENTRY.ACT_ID))
                .where(HANDOFF_ENTRY.FOLDER_ID.eq(folder.value()), HANDOFF_ACT.KIND.in(MOVES), DSL.and(which))
                .orderBy(HANDOFF_ENTRY.OPENING, HANDOFF_ACT.ID.desc())
                .fetchMap(row -> new OpeningId(row.get(HANDOFF_ENTRY.OPENING)), Custodies::custody);
    }

    private static Custody custody(Record row) {
        long act = row.get(HANDOFF_ACT.ID);
        var at = row.get(HANDOFF_ACT.AT);
        String by = row.get(HANDOFF_ACT.PERSON);
        return switch (Coded.of(ActKind.class, row.get(HANDOFF_ACT.KIND))) {
            case RELEASED -> new Custody.Released(act, at, by);
            case ACCEPTED -> new Custody.Accepted(act, at, by);
            case RETURNED ->
                new Custody.Returned(
                        act,
                        at,
                        by,
                        Coded.of(ReturnReason.class, row.get(HANDOFF_ACT.REASON)),
                        row.get(HANDOFF_ACT.NOTE));
            case HOLD_PASSED, HOLD_FAILED, TEST_PASSED, TEST_FAILED ->
                throw new IllegalStateException("act " + act + " moves no opening");
        };
    }
}
