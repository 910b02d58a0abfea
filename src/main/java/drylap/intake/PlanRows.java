package drylap.intake;

import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.CoverNow;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.OpenWindow;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rows of the files that stand beside {@code visits.csv} in a plan folder. */
final class PlanRows {
    private static final double MOST = 1e15;
    private static final List<String> TOTALS = List.of("hard", "medium", "soft");

    private PlanRows() {}

    static List<UnplannedTask> unplanned(Table table, Known known) {
        List<UnplannedTask> tasks = new ArrayList<>();
        table.each(row -> {
            UnplannedTask task = new UnplannedTask(
                    opening(row, known),
                    row.coded("task", Task.class),
                    row.coded("reason", UnplannedReason.class),
                    row.raw("detail"));
            if (row.sound()) tasks.add(task);
        });
        return tasks;
    }

    static List<CoverNow> coverNow(Table table, Known known) {
        List<CoverNow> openings = new ArrayList<>();
        table.each(row -> {
            CoverNow cover = new CoverNow(
                    opening(row, known),
                    row.optional("open_since", row::instant),
                    row.instant("next_rain"),
                    row.whole("minutes_to_close", "minutes", 0, 100_000));
            if (row.sound()) openings.add(cover);
        });
        return openings;
    }

    private static OpeningId opening(Row row, Known known) {
        OpeningId opening = new OpeningId(row.text("opening"));
        known.openings.require(row, "opening", opening);
        return opening;
    }

    static List<OpenWindow> openHours(Table table, Known known) {
        List<OpenWindow> windows = new ArrayList<>();
        table.each(row -> {
            FacadeId facade = FacadeRows.reference(row, known);
            Task task = row.coded("task", Task.class);
            Instant from = row.instant("from");
            Instant until = row.instant("until");
            if (row.sound() && !until.isAfter(from))
                row.wrong("until", "is not after from", "a time after " + row.raw("from"));
            if (row.sound()) windows.add(new OpenWindow(facade, task, new TimeWindow(from, until)));
        });
        return windows;
    }

    static Ledger ledger(Table table) {
        List<Ledger.Line> lines = new ArrayList<>();
        Map<String, Long> totals = new HashMap<>();
        Ids<String> terms = new Ids<>(Ids.Kind.TERM, table.header());
        table.each(row -> {
            String term = row.raw("term");
            if (TOTALS.contains(term)) {
                totals.put(term, (long) row.number("cost", "", -MOST, MOST));
            } else {
                Ledger.Line line = line(row);
                if (row.sound()) lines.add(line);
            }
            if (row.sound()) terms.claim(row, "term", term);
        });
        if (table.sound())
            for (String total : TOTALS)
                if (!totals.containsKey(total)) table.report(0, "", "has no row " + total, "", "a row for each total");
        return new Ledger(lines, total(totals, "hard"), total(totals, "medium"), total(totals, "soft"));
    }

    private static long total(Map<String, Long> totals, String name) {
        return totals.getOrDefault(name, 0L);
    }

    private static Ledger.Line line(Row row) {
        return new Ledger.Line(
                row.coded("term", LedgerTerm.class),
                (long) row.number("amount", "", -MOST, MOST),
                (long) row.number("weight", "", 0, MOST),
                (long) row.number("cost", "", -MOST, MOST));
    }
}
