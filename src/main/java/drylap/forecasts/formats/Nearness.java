package drylap.forecasts.formats;

import drylap.kernel.GeoPoint;
import drylap.sites.Site;

/** Whether a forecast is of the site's own place: the cells of all sources are far smaller than this. */
final class Nearness {
    private static final double FAR_KM = 50;

    private Nearness() {}

    static void check(Json where, double latitude, double longitude, Site site) {
        String accepted = "a place within %.0f km of the site (%s, %s), latitude and longitude not swapped"
                .formatted(FAR_KM, site.place().latitude(), site.place().longitude());
        boolean onEarth = Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180;
        if (!onEarth) {
            where.wrong("is no place on Earth (latitude %s, longitude %s)".formatted(latitude, longitude), accepted);
            return;
        }
        double distance = new GeoPoint(latitude, longitude).kilometresTo(site.place());
        if (distance > FAR_KM) where.wrong("is %.0f km from the site".formatted(distance), accepted);
    }
}
