package drylap.ui.drawn;

import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import java.util.List;

/** A plan's cost, term by term, in words. */
public record LedgerSheet(List<Row> rows, long soft, long medium) {
    /** @param share of the whole soft cost, 0 to 1 */
    public record Row(String term, String meaning, long amount, long weight, long cost, double share) {}

    public static LedgerSheet of(Ledger ledger) {
        return new LedgerSheet(
                ledger.lines().stream().map(line -> row(line, ledger.soft())).toList(), ledger.soft(), ledger.medium());
    }

    private static Row row(Ledger.Line line, long whole) {
        return new Row(
                term(line.term()),
                line.term().meaning(),
                line.amount(),
                line.weight(),
                line.cost(),
                whole == 0 ? 0 : (double) line.cost() / whole);
    }

    static String term(LedgerTerm term) {
        return switch (term) {
            case LATE_HANDOVER -> "Late hand-over";
            case CREW_DAYS -> "Crew-days";
            case TRAVEL -> "Travel";
            case SETUP -> "Set-up";
            case OVERTIME -> "Overtime";
            case OPEN_COURSE -> "Courses begun, not finished";
            case RAIN_RISK -> "Rain on an open opening";
            case CHANGED -> "Changes to the published plan";
        };
    }
}
