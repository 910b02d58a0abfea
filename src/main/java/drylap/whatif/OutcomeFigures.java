package drylap.whatif;

import drylap.planning.LedgerTerm;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What came of a scenario, in figures: a season's plans are too large to keep for as long as someone reads.
 *
 * @param notPlanned tasks that the plan leaves out
 * @param medium work left out and openings left open to rain, as the ledger weighs them
 */
public record OutcomeFigures(
        String name,
        int notPlanned,
        long medium,
        long soft,
        Map<LedgerTerm, Long> costs,
        long crewDays,
        List<Outcome.Handover> handovers) {
    public OutcomeFigures {
        costs = Map.copyOf(costs);
        handovers = List.copyOf(handovers);
    }

    public static OutcomeFigures of(Outcome outcome) {
        Map<LedgerTerm, Long> costs = new EnumMap<>(LedgerTerm.class);
        for (LedgerTerm term : LedgerTerm.values()) costs.put(term, outcome.cost(term));
        return new OutcomeFigures(
                outcome.name(),
                outcome.plan().unplanned().size(),
                outcome.plan().ledger().medium(),
                outcome.plan().ledger().soft(),
                costs,
                outcome.crewDays(),
                outcome.handovers());
    }

    public long cost(LedgerTerm term) {
        return costs.getOrDefault(term, 0L);
    }
}
