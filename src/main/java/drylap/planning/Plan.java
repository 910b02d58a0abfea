package drylap.planning;

import java.time.Instant;
import java.util.List;

/**
 * What the planner answers; immutable.
 *
 * @param start nothing unpinned starts before it
 * @param horizonEnd the end of the last shift, overtime included
 * @param visits sorted by crew, then start
 */
public record Plan(
        Instant start,
        Instant horizonEnd,
        List<Visit> visits,
        List<UnplannedTask> unplanned,
        List<CoverNow> coverNow,
        List<OpenWindow> openHours,
        Ledger ledger) {
    public Plan {
        visits = List.copyOf(visits);
        unplanned = List.copyOf(unplanned);
        coverNow = List.copyOf(coverNow);
        openHours = List.copyOf(openHours);
    }
}
