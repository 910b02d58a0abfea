package drylap.planning;

import java.util.List;

/** A plan's cost, term by term; {@code hard} counts broken rules and is 0 for a plan, all other numbers are costs. */
public record Ledger(List<Line> lines, long hard, long medium, long soft) {
    /** @param cost amount times weight */
    public record Line(LedgerTerm term, long amount, long weight, long cost) {}

    public Ledger {
        lines = List.copyOf(lines);
    }
}
