package drylap.forecasts;

import drylap.sites.Site;
import drylap.weather.RainChance;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** An answer in the structure of a Locationforecast, with chances of hours and of the six hours from each, of rain that lasts. */
public final class BothTellings {
    private static final int PERIOD = 6;

    private BothTellings() {}

    /** @param from a whole hour */
    public static String of(Site site, Instant from, int hours, double rho) {
        String steps = IntStream.range(0, hours)
                .mapToObj(hour -> step(from.plus(Duration.ofHours(hour)), hour, rho))
                .collect(Collectors.joining(",\n"));
        return """
                { "type": "Feature", "geometry": {"type": "Point", "coordinates": [%s, %s, 38]},
                  "properties": {
                    "meta": {"updated_at": "%s",
                      "units": {"air_temperature": "celsius", "precipitation_amount": "mm", "probability_of_precipitation": "%%",
                        "relative_humidity": "%%", "wind_from_direction": "degrees", "wind_speed": "m/s", "wind_speed_of_gust": "m/s"}},
                    "timeseries": [%s]}}""".formatted(site.place().longitude(), site.place().latitude(), from, steps);
    }

    private static String step(Instant time, int hour, double rho) {
        double[] six = IntStream.range(hour, hour + PERIOD)
                .mapToDouble(BothTellings::chance)
                .toArray();
        return """
                {"time": "%s", "data": {
                  "instant": {"details": {"air_temperature": 7.5, "relative_humidity": 88.6, "wind_from_direction": 151.8, "wind_speed": 2.5, "wind_speed_of_gust": 6.6}},
                  "next_1_hours": {"details": {"precipitation_amount": 0.4, "probability_of_precipitation": %s}},
                  "next_6_hours": {"details": {"precipitation_amount": 2.4, "probability_of_precipitation": %s}}}}""".formatted(time, percent(chance(hour)), percent(RainChance.persistent(rho, six)));
    }

    /** From 10 to 39 of 100. */
    private static double chance(int hour) {
        return (10 + hour * 7 % 30) / 100.0;
    }

    private static String percent(double chance) {
        return String.format(Locale.ROOT, "%.1f", 100 * chance);
    }
}
