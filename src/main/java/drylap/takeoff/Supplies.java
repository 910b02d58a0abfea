package drylap.takeoff;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.speech.Saying;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What some openings take, and how their strips are cut from rolls.
 *
 * @param openings in the order in which crews come to them, or in which the folder has them
 */
public record Supplies(List<OpeningTakeOff> openings, Sums sums, List<CutList> cuts) {
    /** Stands below every list. */
    public static final String FIRST =
            "Sizes are the trade's defaults or your firm's own; the window maker's instructions come first.";

    private static final double MM_PER_M = 1_000;

    private record Stock(boolean pan, double widthMm) {
        static Stock of(Strip strip) {
            return new Stock(strip.kind() == Strip.Kind.PAN, strip.widthMm());
        }
    }

    public Supplies {
        openings = List.copyOf(openings);
        cuts = List.copyOf(cuts);
    }

    static Supplies of(List<OpeningTakeOff> all, Rules rules) {
        return new Supplies(all, Sums.of(all, rules), cuts(all, rules));
    }

    /** Nothing of it is left to put on. */
    public boolean isEmpty() {
        return sums.isEmpty();
    }

    /** How strips that are longer than a roll are joined, a sentence each; nothing where none is. */
    public List<Saying> joints() {
        return cuts.stream().flatMap(cut -> cut.joints().stream()).distinct().toList();
    }

    /** Strips of one width come from the same rolls, but for pans, whose stuff is another. */
    private static List<CutList> cuts(List<OpeningTakeOff> all, Rules rules) {
        Map<Stock, List<Strip>> stocks = all.stream()
                .flatMap(one -> one.strips().stream())
                .collect(Collectors.groupingBy(
                        Stock::of,
                        () -> new TreeMap<>(Comparator.comparing(Stock::pan).thenComparing(Stock::widthMm)),
                        Collectors.toList()));
        return stocks.entrySet().stream()
                .map(stock -> CutList.of(
                        stock.getKey().pan(),
                        stock.getKey().widthMm(),
                        rules.value(Rule.STRIP_ROLL_M) * MM_PER_M,
                        rules.value(Rule.STRIP_LAP_MM),
                        stock.getValue()))
                .toList();
    }
}
