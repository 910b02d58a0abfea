package drylap.kernel;

import java.util.Comparator;

/** A wall of a site; its name is unique within the site only. */
public record FacadeId(SiteId site, String facade) implements Comparable<FacadeId> {
    private static final Comparator<FacadeId> ORDER =
            Comparator.comparing(FacadeId::site).thenComparing(FacadeId::facade);

    public FacadeId {
        if (facade.isBlank()) throw new IllegalArgumentException("a facade of site " + site + " has a blank name");
    }

    @Override
    public int compareTo(FacadeId other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return site + "/" + facade;
    }
}
