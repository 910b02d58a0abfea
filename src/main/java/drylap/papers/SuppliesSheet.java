package drylap.papers;

import drylap.speech.Speech;
import java.util.List;

/**
 * What installs take and how strips are cut, as it is printed for the yard.
 *
 * @param say in whose language it is printed
 * @param title of what it is
 * @param origin when it was printed
 * @param facts sums of all of it
 * @param shares what single crews or walls take of it; none where there is but one
 * @param notes where sizes come from, how strips are joined
 */
public record SuppliesSheet(
        Speech say,
        String title,
        String origin,
        List<String> facts,
        List<Line> shares,
        List<Stock> stocks,
        List<String> notes) {
    public SuppliesSheet {
        facts = List.copyOf(facts);
        shares = List.copyOf(shares);
        stocks = List.copyOf(stocks);
        notes = List.copyOf(notes);
    }

    /** What is said of one thing. */
    public record Line(String name, String words) {}

    /**
     * Rolls of one width.
     *
     * @param cuts of all of them, equal ones together
     * @param rolls what each is cut to
     */
    public record Stock(String head, List<String> cuts, List<Line> rolls) {
        public Stock {
            cuts = List.copyOf(cuts);
            rolls = List.copyOf(rolls);
        }
    }
}
