package drylap.cli;

import drylap.planning.LedgerTerm;
import drylap.whatif.Outcome;
import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Outcomes side by side, the folder as it is first. */
final class OutcomeTable {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private final List<Outcome> outcomes;
    private final List<List<String>> rows = new ArrayList<>();

    OutcomeTable(List<Outcome> outcomes) {
        this.outcomes = outcomes;
    }

    void print(PrintWriter out) {
        row("", Outcome::name);
        row("tasks not planned", one -> number(one.plan().unplanned().size()));
        row("work left out", one -> number(one.plan().ledger().medium()));
        row("cost", one -> number(one.plan().ledger().soft()));
        for (LedgerTerm term : LedgerTerm.values()) row("  " + term.code(), one -> number(one.cost(term)));
        row("days crews come out", one -> number(one.crewDays()));
        List<Outcome.Handover> walls = outcomes.getFirst().handovers();
        for (int i = 0; i < walls.size(); i++) {
            int wall = i;
            row(name(walls.get(wall)), one -> handover(one, one.handovers().get(wall)));
        }
        int[] widths = widths();
        rows.forEach(row -> out.println(line(row, widths)));
    }

    private void row(String name, Function<Outcome, String> cell) {
        List<String> row = new ArrayList<>(List.of(name));
        outcomes.forEach(one -> row.add(cell.apply(one)));
        rows.add(row);
    }

    private static String name(Outcome.Handover wall) {
        String due = wall.due() == null ? "" : ", due " + wall.due();
        return "%s/%s clad by%s".formatted(wall.facade().site(), wall.facade().facade(), due);
    }

    private static String handover(Outcome outcome, Outcome.Handover wall) {
        if (wall.notPlanned() > 0) return "%d not planned".formatted(wall.notPlanned());
        if (wall.cladBy() == null) return "nothing to do";
        var at = wall.cladBy().atZone(outcome.folder().zone(wall.facade().site()));
        boolean late = wall.due() != null && at.toLocalDate().isAfter(wall.due());
        return WHEN.format(at) + (late ? " late" : "");
    }

    private static String number(long number) {
        return "%,d".formatted(number);
    }

    private int[] widths() {
        int[] widths = new int[rows.getFirst().size()];
        for (List<String> row : rows)
            for (int i = 0; i < widths.length; i++)
                widths[i] = Math.max(widths[i], row.get(i).length());
        return widths;
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder(("%-" + widths[0] + "s").formatted(row.getFirst()));
        for (int i = 1; i < widths.length; i++) line.append("  ").append(("%" + widths[i] + "s").formatted(row.get(i)));
        return line.toString();
    }
}
