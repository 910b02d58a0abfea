package drylap.handoff;

import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static drylap.persistence.jooq.Tables.HANDOFF_ENTRY;
import static drylap.persistence.jooq.Tables.OPENING;

import drylap.kernel.FolderId;
import drylap.sites.Opening;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** What was decided at hold points and by water tests; the newest decision counts. */
@Service
final class Decisions {
    private static final Condition OF_MOCK_UPS = HANDOFF_ACT.HOLD_POINT.eq(HoldPoint.MOCK_UP.code());
    private static final Condition OF_ROUGH_OPENINGS = HANDOFF_ACT.HOLD_POINT.eq(HoldPoint.ROUGH_OPENING.code());
    private static final Condition OF_TESTS =
            HANDOFF_ACT.KIND.in(ActKind.TEST_PASSED.code(), ActKind.TEST_FAILED.code());

    private final DSLContext db;

    Decisions(DSLContext db) {
        this.db = db;
    }

    ReleaseCheck.Held held(FolderId folder, Opening opening) {
        Condition here = HANDOFF_ENTRY.OPENING.eq(opening.id().value());
        return new ReleaseCheck.Held(
                newest(folder, OF_ROUGH_OPENINGS.and(here))
                        .filter(ActKind.HOLD_FAILED::equals)
                        .isPresent(),
                newest(folder, OF_MOCK_UPS.and(sameKind(opening)))
                        .filter(ActKind.HOLD_PASSED::equals)
                        .isPresent(),
                newest(folder, OF_TESTS.and(here))
                        .filter(ActKind.TEST_PASSED::equals)
                        .isPresent());
    }

    /** The same frame set the same way, at the same site: one mock-up stands for all of them. */
    private static Condition sameKind(Opening opening) {
        return OPENING.SITE
                .eq(opening.facade().site().value())
                .and(OPENING.METHOD.eq(opening.method().code()))
                .and(OPENING.APPROACH.eq(opening.approach().code()))
                .and(OPENING.FRAME.eq(opening.frame().code()));
    }

    private Optional<ActKind> newest(FolderId folder, Condition which) {
        return db.select(HANDOFF_ACT.KIND)
                .from(HANDOFF_ACT)
                .join(HANDOFF_ENTRY)
                .on(HANDOFF_ENTRY.ACT_ID.eq(HANDOFF_ACT.ID))
                .join(OPENING)
                .on(OPENING.FOLDER_ID.eq(HANDOFF_ENTRY.FOLDER_ID), OPENING.OPENING_.eq(HANDOFF_ENTRY.OPENING))
                .where(HANDOFF_ENTRY.FOLDER_ID.eq(folder.value()), which)
                .orderBy(HANDOFF_ACT.ID.desc())
                .limit(1)
                .fetchOptional(row -> drylap.kernel.Coded.of(ActKind.class, row.value1()));
    }
}
