package drylap.ui.drawn;

import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.speech.Speech;
import java.util.List;
import java.util.Locale;

/** A plan's cost, term by term, in words. */
public record LedgerSheet(List<Row> rows, long soft, long medium) {
    /** @param share of the whole soft cost, 0 to 1 */
    public record Row(String term, String meaning, long amount, long weight, long cost, double share) {}

    public static LedgerSheet of(Speech say, Ledger ledger) {
        return new LedgerSheet(
                ledger.lines().stream()
                        .map(line -> row(say, line, ledger.soft()))
                        .toList(),
                ledger.soft(),
                ledger.medium());
    }

    private static Row row(Speech say, Ledger.Line line, long whole) {
        return new Row(
                name(say, line.term()),
                say.it(line.term().meaning()),
                line.amount(),
                line.weight(),
                line.cost(),
                whole == 0 ? 0 : (double) line.cost() / whole);
    }

    /** As a heading has it. */
    static String name(Speech say, LedgerTerm term) {
        String words = say.it(term(term));
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static String term(LedgerTerm term) {
        return switch (term) {
            case LATE_HANDOVER -> "late hand-over";
            case CREW_DAYS -> "crew-days";
            case TRAVEL -> "travel";
            case SETUP -> "set-up";
            case OVERTIME -> "overtime";
            case OPEN_COURSE -> "courses begun, not finished";
            case RAIN_RISK -> "rain on an open opening";
            case CHANGED -> "changes to the published plan";
        };
    }
}
