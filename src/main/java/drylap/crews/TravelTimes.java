package drylap.crews;

import drylap.kernel.GeoPoint;
import java.util.Map;

/**
 * Minutes on the road between places, named by site or crew id (a crew's base). A given leg is used as given and in its
 * direction only; any other is estimated as 1.3 times the great circle at 40 km/h.
 */
public record TravelTimes(Map<Leg, Integer> given) {
    public record Leg(String from, String to) {}

    private static final double DETOUR = 1.3;
    private static final double KM_H = 40;

    public TravelTimes {
        given = Map.copyOf(given);
    }

    public int minutes(String from, GeoPoint start, String to, GeoPoint end) {
        if (from.equals(to)) return 0;
        Integer minutes = given.get(new Leg(from, to));
        return minutes != null ? minutes : (int) Math.ceil(DETOUR * start.kilometresTo(end) / KM_H * 60);
    }
}
