package drylap.windowschedule;

import drylap.sites.Opening;
import drylap.windowschedule.OpeningOutcome.Kind;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a draft would make of a site: all of it, or nothing as long as anything is wrong.
 *
 * @param lacking what has to be chosen for the whole schedule first
 * @param missing openings of the site that the schedule does not name; they stay
 */
public record Outcome(List<RowOutcome> rows, List<String> lacking, List<Opening> missing) {
    public Outcome {
        rows = List.copyOf(rows);
        lacking = List.copyOf(lacking);
        missing = List.copyOf(missing);
    }

    public List<CellFault> faults() {
        return rows.stream().flatMap(row -> row.faults().stream()).toList();
    }

    public Stream<OpeningOutcome> openings() {
        return rows.stream().flatMap(row -> row.openings().stream());
    }

    public List<OpeningOutcome> openings(Kind kind) {
        return openings().filter(one -> one.kind() == kind).toList();
    }

    /** Whether it may be taken in: nothing is wrong, and there is something to take in. */
    public boolean sound() {
        return lacking.isEmpty() && faults().isEmpty() && openings().findAny().isPresent();
    }
}
