package drylap.intake;

import drylap.kernel.SiteId;
import drylap.sites.Site;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The clocks of the sites; times are written in their offset. */
record Zones(Map<SiteId, ZoneId> bySite) {
    static Zones of(List<Site> sites) {
        Map<SiteId, ZoneId> zones = new HashMap<>();
        sites.forEach(site -> zones.put(site.id(), site.zone()));
        return new Zones(zones);
    }

    ZoneId of(SiteId site) {
        return Objects.requireNonNull(bySite.get(site), () -> "no site " + site);
    }
}
