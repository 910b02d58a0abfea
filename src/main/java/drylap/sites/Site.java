package drylap.sites;

import drylap.kernel.GeoPoint;
import drylap.kernel.SiteId;
import java.time.ZoneId;

/** @param address for people who drive there; the planner goes by {@code place} */
public record Site(SiteId id, String name, GeoPoint place, ZoneId zone, Terrain terrain, StreetAddress address) {
    /** A site of which no address is told. */
    public Site(SiteId id, String name, GeoPoint place, ZoneId zone, Terrain terrain) {
        this(id, name, place, zone, terrain, StreetAddress.NONE);
    }

    /** The name, and where it is by road as far as that is told; in one line. */
    public String nameAndAddress() {
        return address.known() ? "%s, %s".formatted(name, address.inOneLine()) : name;
    }
}
