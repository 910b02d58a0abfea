package drylap.planning;

import java.util.List;

/**
 * A plan's cost, term by term; all numbers but {@code hard} are costs.
 *
 * @param hard broken rules: none in what the planner makes; what the day has broken of a plan stays in it when it is moved by hand
 */
public record Ledger(List<Line> lines, long hard, long medium, long soft) {
    /** @param cost amount times weight */
    public record Line(LedgerTerm term, long amount, long weight, long cost) {}

    public Ledger {
        lines = List.copyOf(lines);
    }
}
