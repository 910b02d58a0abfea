package drylap.planning;

import drylap.kernel.GeoPoint;
import java.time.ZoneId;

/** A site as somebody describes it by hand. */
public record SiteDraft(String name, GeoPoint place, ZoneId zone) {
    public SiteDraft {
        name = name.strip();
    }
}
