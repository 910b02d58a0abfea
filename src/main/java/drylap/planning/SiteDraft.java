package drylap.planning;

import drylap.kernel.GeoPoint;
import java.time.ZoneId;

/**
 * A site as somebody describes it by hand.
 *
 * @param address as typed, a line below the other; blank: not told
 */
public record SiteDraft(String name, String address, GeoPoint place, ZoneId zone) {
    public SiteDraft {
        name = name.strip();
    }
}
