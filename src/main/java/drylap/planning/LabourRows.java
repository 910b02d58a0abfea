package drylap.planning;

import static drylap.persistence.jooq.Tables.LABOUR_ROW;

import drylap.assembly.Method;
import drylap.kernel.Coded;
import drylap.kernel.FolderId;
import drylap.kernel.Task;
import drylap.persistence.jooq.tables.records.LabourRowRecord;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** The labour table of each job folder, as stored. */
@Service
final class LabourRows {
    private final DSLContext db;

    LabourRows(DSLContext db) {
        this.db = db;
    }

    void save(FolderId folder, LabourTable labour) {
        List<LabourRowRecord> rows = new ArrayList<>();
        for (LabourRow row : labour.rows())
            rows.add(new LabourRowRecord(
                    folder.value(),
                    rows.size(),
                    row.task().code(),
                    code(row.method()),
                    row.fixedMin(),
                    row.perM2Min(),
                    row.panMin(),
                    row.setupSiteMin(),
                    row.setupFacadeMin(),
                    row.setupLevelMin()));
        db.batchInsert(rows).execute();
    }

    LabourTable of(FolderId folder) {
        return new LabourTable(db.selectFrom(LABOUR_ROW)
                .where(LABOUR_ROW.FOLDER_ID.eq(folder.value()))
                .orderBy(LABOUR_ROW.ROW_NO)
                .fetch(LabourRows::labour));
    }

    private static LabourRow labour(LabourRowRecord row) {
        return new LabourRow(
                Coded.of(Task.class, row.getTask()),
                method(row.getMethod()),
                row.getFixedMin(),
                row.getPerM2Min(),
                row.getPanMin(),
                row.getSetupSiteMin(),
                row.getSetupFacadeMin(),
                row.getSetupLevelMin());
    }

    private static @Nullable String code(@Nullable Method method) {
        return method == null ? null : method.code();
    }

    private static @Nullable Method method(@Nullable String code) {
        return code == null ? null : Coded.of(Method.class, code);
    }
}
