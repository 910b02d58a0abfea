package drylap.forecasts.formats;

import drylap.forecasts.ForecastWords;
import drylap.kernel.GeoPoint;
import drylap.sites.Site;

/** Whether a forecast is of the site's own place: the cells of all sources are far smaller than this. */
final class Nearness {
    private static final int FAR_KM = 50;

    private Nearness() {}

    static void check(Json where, double latitude, double longitude, Site site) {
        String accepted = ForecastWords.NEAR.with(
                FAR_KM, site.place().latitude(), site.place().longitude());
        boolean onEarth = Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180;
        if (!onEarth) {
            where.wrong(ForecastWords.NOT_ON_EARTH.with(latitude, longitude), accepted);
            return;
        }
        double distance = new GeoPoint(latitude, longitude).kilometresTo(site.place());
        if (distance > FAR_KM) where.wrong(ForecastWords.FAR.with(Math.round(distance)), accepted);
    }
}
