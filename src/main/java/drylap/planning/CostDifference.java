package drylap.planning;

import java.util.Arrays;
import java.util.List;

/** What one plan costs more than another, without what changes of a published plan cost. */
public record CostDifference(long medium, long soft, List<Term> terms) {
    /** Of one term of the ledger. */
    public record Term(LedgerTerm term, long more) {}

    public CostDifference {
        terms = List.copyOf(terms);
    }

    public static CostDifference of(Ledger before, Ledger after) {
        List<Term> terms = Arrays.stream(LedgerTerm.values())
                .filter(term -> term != LedgerTerm.CHANGED)
                .map(term -> new Term(term, cost(after, term) - cost(before, term)))
                .filter(term -> term.more() != 0)
                .toList();
        return new CostDifference(
                after.medium() - before.medium(),
                terms.stream().mapToLong(Term::more).sum(),
                terms);
    }

    private static long cost(Ledger ledger, LedgerTerm term) {
        return ledger.lines().stream()
                .filter(line -> line.term() == term)
                .mapToLong(Ledger.Line::cost)
                .sum();
    }
}
