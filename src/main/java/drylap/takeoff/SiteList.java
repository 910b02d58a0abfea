package drylap.takeoff;

import drylap.kernel.FacadeId;
import drylap.kernel.SiteId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a site takes, as it is ordered.
 *
 * @param byWall whose sum it is, in the order of the folder
 */
public record SiteList(SiteId site, Extent extent, Map<FacadeId, Sums> byWall, Supplies supplies) {
    public SiteList {
        byWall = Collections.unmodifiableMap(new LinkedHashMap<>(byWall));
    }
}
