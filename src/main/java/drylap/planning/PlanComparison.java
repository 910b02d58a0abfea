package drylap.planning;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A proposed plan beside the published one: each task's change, and both ledgers term by term.
 *
 * @param changes the published plan's tasks in its order, then those that only the proposal has
 */
public record PlanComparison(List<PlanChange> changes, List<TermChange> ledger) {
    /** @param published the published plan's own ledger, as it was when that plan was made */
    public record TermChange(LedgerTerm term, long published, long proposed) {
        public long more() {
            return proposed - published;
        }
    }

    private record Key(OpeningId opening, Task task) {
        static Key of(Visit visit) {
            return new Key(visit.opening(), visit.task());
        }
    }

    public PlanComparison {
        changes = List.copyOf(changes);
        ledger = List.copyOf(ledger);
    }

    /** @param folder as it stands by now, with the pins that hold now among its published visits */
    public static PlanComparison of(Plan published, Plan proposal, JobFolder folder) {
        Map<Key, Visit> after = new LinkedHashMap<>();
        for (Visit visit : proposal.visits()) after.put(Key.of(visit), visit);
        WhyChanged why = new WhyChanged(folder, published, proposal);
        List<PlanChange> changes = new ArrayList<>();
        Set<Key> seen = new HashSet<>();
        for (Visit before : published.visits()) {
            Key key = Key.of(before);
            seen.add(key);
            changes.add(why.explain(new PlanChange(before, after.get(key), List.of())));
        }
        after.forEach((key, visit) -> {
            if (!seen.contains(key)) changes.add(why.added(visit));
        });
        return new PlanComparison(changes, terms(published.ledger(), proposal.ledger()));
    }

    public List<PlanChange> of(PlanChange.Kind kind) {
        return changes.stream().filter(change -> change.kind() == kind).toList();
    }

    private static List<TermChange> terms(Ledger published, Ledger proposed) {
        List<TermChange> terms = new ArrayList<>();
        for (LedgerTerm term : LedgerTerm.values())
            terms.add(new TermChange(term, cost(published, term), cost(proposed, term)));
        return terms;
    }

    private static long cost(Ledger ledger, LedgerTerm term) {
        return ledger.lines().stream()
                .filter(line -> line.term() == term)
                .mapToLong(Ledger.Line::cost)
                .sum();
    }
}
