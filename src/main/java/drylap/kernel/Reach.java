package drylap.kernel;

import java.util.Collection;
import java.util.Set;

/** The sites that someone may see: all of them, or those named. */
public record Reach(boolean everySite, Set<SiteId> sites) {
    public static final Reach EVERYWHERE = new Reach(true, Set.of());
    public static final Reach NOWHERE = new Reach(false, Set.of());

    public Reach {
        sites = Set.copyOf(sites);
        if (everySite && !sites.isEmpty())
            throw new IllegalArgumentException("a reach of every site names none: " + sites);
    }

    public static Reach of(Collection<SiteId> sites) {
        return new Reach(false, Set.copyOf(sites));
    }

    /** The sites that both cover. */
    public Reach within(Reach other) {
        if (everySite) return other;
        return other.everySite
                ? this
                : of(sites.stream().filter(other.sites::contains).toList());
    }

    public boolean covers(SiteId site) {
        return everySite || sites.contains(site);
    }

    public boolean coversAll(Collection<SiteId> wanted) {
        return everySite || sites.containsAll(wanted);
    }
}
