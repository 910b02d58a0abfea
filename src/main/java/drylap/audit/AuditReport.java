package drylap.audit;

import drylap.planning.CoverNow;
import drylap.planning.Ledger;
import java.time.Instant;
import java.util.List;

/**
 * What an audit found. It judges a plan against the rules of planning; it never says that work at height is safe.
 *
 * @param start the moment from which the plan was judged
 * @param ledger the costs as the audit counts them; {@code hard} is the number of hard breaches
 * @param coverNow the openings to cover now as the audit finds them
 */
public record AuditReport(List<Breach> breaches, Instant start, Ledger ledger, List<CoverNow> coverNow) {
    public AuditReport {
        breaches = List.copyOf(breaches);
        coverNow = List.copyOf(coverNow);
    }

    public boolean clean() {
        return breaches.isEmpty();
    }
}
