package drylap.windowschedule;

import java.util.List;

/** What a row of the schedule becomes: openings, or faults; neither where a person left it out. */
public record RowOutcome(Sheet.Row row, boolean leftOut, List<CellFault> faults, List<OpeningOutcome> openings) {
    public RowOutcome {
        faults = List.copyOf(faults);
        openings = List.copyOf(openings);
    }

    public int number() {
        return row.number();
    }
}
