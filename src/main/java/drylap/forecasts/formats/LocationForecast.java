package drylap.forecasts.formats;

import drylap.forecasts.ForecastReading;
import drylap.forecasts.ForecastWords;
import drylap.sites.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * MET Norway's Locationforecast 2.0. Each step tells the weather of its moment, and the rain of the 1 or 6 hours from it: hourly
 * at first, every 6 hours later.
 */
public final class LocationForecast {
    private final Findings findings = new Findings();
    private final Hours hours = new Hours(findings);

    private LocationForecast() {}

    /** Reads a whole answer for the site. */
    public static ForecastReading read(byte[] bytes, Site site) {
        return new LocationForecast().reading(bytes, site);
    }

    private ForecastReading reading(byte[] bytes, Site site) {
        Json root = Json.read(bytes, findings);
        if (root == null) return findings.refused();
        Json geometry = root.object("geometry");
        if (geometry != null) place(geometry, site);
        Json properties = root.object("properties");
        Json meta = properties == null ? null : properties.object("meta");
        Json units = meta == null ? null : meta.object("units");
        List<Json> series = properties == null ? null : properties.list("timeseries");
        if (meta == null || units == null || series == null) return findings.refused();
        Instant issuedAt = meta.instant("updated_at");
        List<Instant> times = times(series);
        if (!findings.none()) return findings.refused();
        LocationSteps steps = new LocationSteps(hours, units);
        for (int i = 0; i < series.size(); i++)
            steps.step(series.get(i), times.get(i), i + 1 < times.size() ? times.get(i + 1) : null);
        return Normal.of(hours, site, issuedAt, findings);
    }

    /** GeoJSON writes the longitude first. */
    private static void place(Json geometry, Site site) {
        List<Json> place = geometry.list("coordinates");
        Double longitude =
                place == null || place.size() < 2 ? null : place.get(0).number();
        Double latitude =
                place == null || place.size() < 2 ? null : place.get(1).number();
        if (longitude != null && latitude != null) Nearness.check(geometry, latitude, longitude, site);
        else if (place != null && place.size() < 2)
            geometry.wrong(ForecastWords.NO_PLACE.with(), ForecastWords.A_PLACE.with());
    }

    private static List<Instant> times(List<Json> series) {
        List<Instant> times = new ArrayList<>();
        for (Json step : series) {
            Instant time = step.instant("time");
            if (time == null) return List.of();
            if (!times.isEmpty() && Duration.between(times.getLast(), time).toHours() < 1)
                step.wrong(ForecastWords.NOT_AFTER_STEP.with(time, times.getLast()), ForecastWords.STEPS.with());
            times.add(time);
        }
        return times;
    }
}
