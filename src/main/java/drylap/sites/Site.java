package drylap.sites;

import drylap.kernel.GeoPoint;
import drylap.kernel.SiteId;
import java.time.ZoneId;

public record Site(SiteId id, String name, GeoPoint place, ZoneId zone, Terrain terrain) {}
