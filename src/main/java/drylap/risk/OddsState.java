package drylap.risk;

import drylap.planning.RunState.Status;
import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How the newest reckoning of a plan stands, and the odds that were reckoned last.
 *
 * @param done trials so far
 * @param failure why it failed, in words; present only then
 * @param odds none as long as no reckoning of the plan has come to its end
 */
public record OddsState(
        Status status,
        int done,
        int trials,
        @Nullable String failure,
        @Nullable Odds odds) {
    /**
     * @param report what of it lies at the person's sites
     * @param changed parts of the job that are otherwise by now than when this was reckoned; none: it holds
     * @param everySite whether all sites are the person's; else what is reckoned over all of them is left out
     */
    public record Odds(RiskReport report, Instant reckonedAt, Set<OddsPart> changed, boolean everySite) {
        public Odds {
            changed = Set.copyOf(changed);
        }
    }

    /** Odds that are there and still hold. */
    public boolean holds() {
        return odds != null && odds.changed().isEmpty();
    }
}
