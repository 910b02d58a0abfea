package drylap.intake;

import drylap.assembly.Method;
import drylap.intake.csv.Lines;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.Coded;
import drylap.kernel.Task;
import drylap.planning.LabourRow;
import drylap.planning.LabourTable;
import drylap.sites.Opening;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The rows of {@code labour.csv}. */
final class LabourRows {
    private static final String ANY = "*";
    private static final String MINUTES = FolderWords.MINUTES.with();
    private static final int MOST_MIN = 10_000;

    private record Key(Task task, @Nullable Method method) {}

    private LabourRows() {}

    static LabourTable read(Table table) {
        List<LabourRow> rows = new ArrayList<>();
        Ids<Key> keys = new Ids<>(Ids.Kind.LABOUR, ContractFiles.LABOUR);
        table.each(row -> {
            LabourRow labour = labour(row);
            if (row.sound()
                    && labour.fixedMin().signum() == 0
                    && labour.perM2Min().signum() == 0)
                row.wrong("fixed_min", FolderWords.NO_TIME.with(), FolderWords.TAKES_TIME.with());
            if (row.sound()) keys.claim(row, "method", new Key(labour.task(), labour.method()));
            if (row.sound()) rows.add(labour);
        });
        return new LabourTable(rows);
    }

    private static LabourRow labour(Row row) {
        return new LabourRow(
                row.coded("task", Task.class),
                method(row),
                row.decimal("fixed_min", MINUTES, 0, MOST_MIN),
                row.decimal("per_m2_min", MINUTES, 0, MOST_MIN),
                row.decimal("pan_min", MINUTES, 0, MOST_MIN),
                row.whole("setup_site_min", MINUTES, 0, MOST_MIN),
                row.whole("setup_facade_min", MINUTES, 0, MOST_MIN),
                row.whole("setup_level_min", MINUTES, 0, MOST_MIN));
    }

    private static @Nullable Method method(Row row) {
        String code = row.raw("method");
        if (code.equals(ANY)) return null;
        Method method = Coded.parse(Method.class, code).orElse(null);
        if (method == null)
            row.wrong(
                    "method",
                    (row.blank("method") ? FolderWords.BLANK : FolderWords.UNKNOWN).with(),
                    FolderWords.METHOD_OR_ANY.with(Coded.codes(Method.class)));
        return method;
    }

    /** Every task that some opening needs must have its minutes; tests have a default. */
    static void checkServed(Table table, LabourTable labour, List<Opening> openings) {
        Set<String> missing = new TreeSet<>();
        for (Opening opening : openings)
            for (Task task : opening.tasks())
                if (!labour.serves(task, opening.method()))
                    missing.add(FolderWords.NO_ROW_FOR.with(
                            task.code(), opening.method().code()));
        for (String need : missing) table.report(0, "", need, "", FolderWords.ROW_OF_TASK.with());
    }

    static Lines write(LabourTable labour) {
        Lines lines = new Lines(ContractFiles.LABOUR);
        for (LabourRow row : labour.rows())
            lines.add(
                    row.task().code(),
                    row.method() == null ? ANY : row.method().code(),
                    row.fixedMin().toPlainString(),
                    row.perM2Min().toPlainString(),
                    row.panMin().toPlainString(),
                    row.setupSiteMin(),
                    row.setupFacadeMin(),
                    row.setupLevelMin());
        return lines;
    }
}
