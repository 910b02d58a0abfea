package drylap.audit;

import java.util.List;

/**
 * The chance that at least one of some hours is wet, given each hour's own chance, when wet hours follow wet hours: a
 * two-state chain with a lag-one correlation (after Gabriel and Neumann 1962, for hours with chances of their own).
 */
final class PersistentRain {
    private PersistentRain() {}

    static double chance(List<Double> hours, double rho) {
        if (hours.isEmpty()) return 0;
        double dry = 1 - hours.getFirst();
        for (int i = 1; i < hours.size() && dry > 0; i++) dry *= 1 - wetAfterDry(hours.get(i - 1), hours.get(i), rho);
        return 1 - dry;
    }

    /** The joint chance cannot leave what two events of these chances can have in common. */
    private static double wetAfterDry(double before, double now, double rho) {
        if (before >= 1) return now; // what dry is left before it is a rounding
        double joint = before * now + rho * Math.sqrt(before * (1 - before) * now * (1 - now));
        double possible = Math.min(Math.min(before, now), Math.max(joint, before + now - 1));
        return (now - possible) / (1 - before);
    }
}
