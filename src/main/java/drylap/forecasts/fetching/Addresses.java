package drylap.forecasts.fetching;

import drylap.forecasts.ForecastSettings;
import drylap.forecasts.ForecastSource;
import drylap.sites.Site;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Where each source is asked for a site. No source wants more than four decimals of a place. */
final class Addresses {
    private final ForecastSettings settings;

    Addresses(ForecastSettings settings) {
        this.settings = settings;
    }

    /** The US service knows its grid cells by number; this asks which one the site lies in. */
    URI gridCell(Site site) {
        return under(ForecastSource.US_WEATHER_SERVICE, place("/points/%.4f,%.4f", site));
    }

    URI gridpoint(String cell) {
        return under(ForecastSource.US_WEATHER_SERVICE, "/gridpoints/" + cell);
    }

    URI openMeteo(Site site) {
        return under(
                ForecastSource.OPEN_METEO,
                place("/v1/forecast?latitude=%.4f&longitude=%.4f", site)
                        + "&hourly=temperature_2m,relative_humidity_2m,precipitation_probability,precipitation,"
                        + "wind_speed_10m,wind_direction_10m,wind_gusts_10m"
                        + "&wind_speed_unit=ms&timezone=GMT&past_days=1&forecast_days=10");
    }

    URI metNorway(Site site) {
        return under(
                ForecastSource.MET_NORWAY, place("/weatherapi/locationforecast/2.0/complete?lat=%.4f&lon=%.4f", site));
    }

    URI csv(Site site) {
        return URI.create(settings.csv()
                .replace(
                        "{site}",
                        URLEncoder.encode(site.id().value(), StandardCharsets.UTF_8)
                                .replace("+", "%20")));
    }

    private URI under(ForecastSource source, String path) {
        return URI.create(settings.base(source).replaceFirst("/+$", "") + path);
    }

    private static String place(String path, Site site) {
        return String.format(
                Locale.ROOT, path, site.place().latitude(), site.place().longitude());
    }
}
