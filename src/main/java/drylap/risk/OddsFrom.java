package drylap.risk;

import drylap.planning.JobFolder;
import drylap.planning.Plan;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.springframework.stereotype.Service;

/** From when on a plan is replayed: what was to be done before and is not goes on from now. */
@Service
final class OddsFrom {
    private final Clock clock;

    OddsFrom(Clock clock) {
        this.clock = clock;
    }

    /** A job whose shifts are all past is replayed from the start: somebody wants to see how it would have gone. */
    Instant of(JobFolder folder, Plan plan) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MINUTES);
        boolean past = folder.lastLimit().filter(now::isBefore).isEmpty();
        return past || now.isBefore(plan.start()) ? plan.start() : now;
    }
}
