package drylap.sites;

import static drylap.persistence.jooq.Tables.OPENING;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.Coded;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.persistence.TableCopy;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.OpeningRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Query;
import org.jooq.impl.DSL;
import org.springframework.stereotype.Service;

/** The openings of each job folder, as stored; their facades are saved first. */
@Service
public final class Openings {
    private final DSLContext db;

    Openings(DSLContext db) {
        this.db = db;
    }

    public void saveAll(FolderId folder, List<Opening> openings) {
        List<OpeningRecord> rows = new ArrayList<>(openings.size());
        for (Opening opening : openings) rows.add(row(folder, rows.size(), opening));
        TableCopy.add(db, rows);
    }

    /** After those that the folder has, in their order. */
    void addAll(FolderId folder, List<Opening> openings) {
        int last = db.select(DSL.coalesce(DSL.max(OPENING.ROW_NO), DSL.inline(-1)))
                .from(OPENING)
                .where(OPENING.FOLDER_ID.eq(folder.value()))
                .fetchSingle()
                .value1();
        List<OpeningRecord> rows = new ArrayList<>(openings.size());
        for (Opening opening : openings) rows.add(row(folder, last + 1 + rows.size(), opening));
        TableCopy.add(db, rows);
    }

    /** Their place, size, frame and method; how far they have come is not touched. */
    void changeAll(FolderId folder, List<Opening> openings) {
        db.batch(openings.stream().map(opening -> change(folder, opening)).toList())
                .execute();
    }

    private Query change(FolderId folder, Opening opening) {
        return db.update(OPENING)
                .set(OPENING.FACADE, opening.facade().facade())
                .set(OPENING.LEVEL, opening.level())
                .set(OPENING.WIDTH_MM, opening.widthMm())
                .set(OPENING.HEIGHT_MM, opening.heightMm())
                .set(OPENING.FRAME, opening.frame().code())
                .set(OPENING.METHOD, opening.method().code())
                .where(OPENING.FOLDER_ID.eq(folder.value()))
                .and(OPENING.OPENING_.eq(opening.id().value()));
    }

    /** Those of these names as they are, which nobody marks or changes until the transaction ends. */
    public List<Opening> locked(FolderId folder, List<OpeningId> ids) {
        return db.selectFrom(OPENING)
                .where(OPENING.FOLDER_ID.eq(folder.value()))
                .and(OPENING.OPENING_.in(ids.stream().map(OpeningId::value).toList()))
                .orderBy(OPENING.OPENING_)
                .forNoKeyUpdate()
                .fetch(Openings::opening);
    }

    public List<Opening> of(FolderId folder) {
        return within(folder, Reach.EVERYWHERE);
    }

    /** Those at the sites of a reach, in the folder's order. */
    public List<Opening> within(FolderId folder, Reach reach) {
        return db.selectFrom(OPENING)
                .where(OPENING.FOLDER_ID.eq(folder.value()))
                .and(Within.reach(OPENING.SITE, reach))
                .orderBy(OPENING.ROW_NO)
                .fetch(Openings::opening);
    }

    /** Empty where the folder has none of that id, or has it at a site outside the reach. */
    public Optional<Opening> find(FolderId folder, OpeningId opening, Reach reach) {
        return db.selectFrom(OPENING)
                .where(OPENING.FOLDER_ID.eq(folder.value()))
                .and(OPENING.OPENING_.eq(opening.value()))
                .and(Within.reach(OPENING.SITE, reach))
                .fetchOptional(Openings::opening);
    }

    private static OpeningRecord row(FolderId folder, int rowNo, Opening opening) {
        return new OpeningRecord(
                folder.value(),
                opening.id().value(),
                rowNo,
                opening.facade().site().value(),
                opening.facade().facade(),
                opening.level(),
                opening.widthMm(),
                opening.heightMm(),
                opening.frame().code(),
                opening.method().code(),
                opening.approach().code(),
                opening.secondLayer().code(),
                opening.deliveredOn(),
                opening.waterTest(),
                opening.priority(),
                opening.done(),
                opening.doneAt(),
                opening.finished().stream().sorted().map(Task::code).toArray(String[]::new));
    }

    private static Opening opening(OpeningRecord row) {
        return new Opening(
                new OpeningId(row.getOpening()),
                new FacadeId(new SiteId(row.getSite()), row.getFacade()),
                row.getLevel(),
                row.getWidthMm(),
                row.getHeightMm(),
                Coded.of(Frame.class, row.getFrame()),
                Coded.of(Method.class, row.getMethod()),
                Coded.of(Approach.class, row.getApproach()),
                Coded.of(SecondLayer.class, row.getSecondLayer()),
                row.getDeliveredOn(),
                row.getWaterTest(),
                row.getPriority(),
                row.getDone(),
                row.getDoneAt(),
                Arrays.stream(row.getFinished())
                        .map(code -> Coded.of(Task.class, code))
                        .collect(Collectors.toSet()));
    }
}
