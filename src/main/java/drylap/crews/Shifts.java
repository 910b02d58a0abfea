package drylap.crews;

import static drylap.persistence.jooq.Tables.CREW;
import static drylap.persistence.jooq.Tables.SHIFT;

import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.persistence.jooq.tables.records.ShiftRecord;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.springframework.stereotype.Service;

/** The shifts of each job folder, as stored; a shift's zone is its crew's, so the crews are saved first. */
@Service
public final class Shifts {
    private final DSLContext db;

    Shifts(DSLContext db) {
        this.db = db;
    }

    public void saveAll(FolderId folder, List<Shift> shifts) {
        save(folder, shifts, 0);
    }

    /** Puts these in the place of all that the crew has from a day on; shifts before it stay. */
    public void replace(FolderId folder, CrewId crew, LocalDate from, List<Shift> shifts) {
        db.deleteFrom(SHIFT)
                .where(SHIFT.FOLDER_ID.eq(folder.value()), SHIFT.CREW.eq(crew.value()), SHIFT.DATE.ge(from))
                .execute();
        int next = db.select(DSL.coalesce(DSL.max(SHIFT.ROW_NO), -1).plus(1))
                .from(SHIFT)
                .where(SHIFT.FOLDER_ID.eq(folder.value()))
                .fetchSingle()
                .value1();
        save(folder, shifts, next);
    }

    private void save(FolderId folder, List<Shift> shifts, int firstRow) {
        List<ShiftRecord> rows = new ArrayList<>(shifts.size());
        for (Shift shift : shifts)
            rows.add(new ShiftRecord(
                    folder.value(),
                    shift.crew().value(),
                    shift.date(),
                    firstRow + rows.size(),
                    shift.start(),
                    shift.end(),
                    shift.breakStart(),
                    shift.breakEnd(),
                    shift.overtimeUntil()));
        db.batchInsert(rows).execute();
    }

    public List<Shift> of(FolderId folder) {
        return db.select(SHIFT, CREW.TIME_ZONE)
                .from(SHIFT)
                .join(CREW)
                .on(CREW.FOLDER_ID.eq(SHIFT.FOLDER_ID), CREW.CREW_.eq(SHIFT.CREW))
                .where(SHIFT.FOLDER_ID.eq(folder.value()))
                .orderBy(SHIFT.ROW_NO)
                .fetch(row -> shift(row.value1(), ZoneId.of(row.value2())));
    }

    private static Shift shift(ShiftRecord row, ZoneId zone) {
        return new Shift(
                new CrewId(row.getCrew()),
                row.getDate(),
                row.getStartTime(),
                row.getEndTime(),
                row.getBreakStart(),
                row.getBreakEnd(),
                row.getOvertimeUntil(),
                zone);
    }
}
