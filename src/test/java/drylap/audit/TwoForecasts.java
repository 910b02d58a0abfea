package drylap.audit;

import static drylap.audit.TwoSites.at;

import drylap.kernel.SiteId;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What is forecast for the two sites, from Monday 2026-04-13 to Wednesday; mild and dry where nothing else is said. */
final class TwoForecasts {
    private static final int HOURS = 72;

    private TwoForecasts() {}

    static List<Forecast> all() {
        return List.of(quayForecast(), millForecast());
    }

    /** A dry hour of 10 °C with a light wind from the west. */
    static ForecastHour dry(Instant start, double p) {
        return new ForecastHour(start, 0, p, 3, 5, 270, 10, 70);
    }

    static ForecastHour rain(Instant start, double mm, double p, double windFromDeg) {
        return new ForecastHour(start, mm, p, 5, 8, windFromDeg, 10, 95);
    }

    private static List<ForecastHour> dryHours() {
        List<ForecastHour> hours = new ArrayList<>();
        for (int i = 0; i < HOURS; i++) hours.add(dry(at("13 00:00").plus(Duration.ofHours(i)), 0));
        return hours;
    }

    private static void put(List<ForecastHour> hours, ForecastHour... changed) {
        Arrays.stream(changed)
                .forEach(hour -> hours.set(
                        (int) Duration.between(at("13 00:00"), hour.start()).toHours(), hour));
    }

    /** Rain on Tuesday from 6 to 8 with the wind from the north; cold from 12 to 15. */
    private static Forecast quayForecast() {
        List<ForecastHour> hours = dryHours();
        put(hours, dry(at("13 07:00"), 0.1), dry(at("13 08:00"), 0.2), dry(at("13 09:00"), 0.3));
        put(hours, dry(at("13 10:00"), 0.2));
        put(hours, rain(at("14 06:00"), 1, 0.8, 0), rain(at("14 07:00"), 1, 0.8, 0));
        for (String hour : List.of("14 12:00", "14 13:00", "14 14:00"))
            put(hours, new ForecastHour(at(hour), 0, 0, 3, 5, 270, 4.3, 70));
        return new Forecast(new SiteId("quay"), hours);
    }

    /** Rain on Monday from 15 to 16 from behind the wall; gusts of 10 m/s on Tuesday from 13 to 15. */
    private static Forecast millForecast() {
        List<ForecastHour> hours = dryHours();
        put(hours, dry(at("13 07:00"), 0.2), dry(at("13 08:00"), 0.2), dry(at("14 07:00"), 0.05));
        put(hours, rain(at("13 15:00"), 0.5, 0.5, 90));
        for (String hour : List.of("14 13:00", "14 14:00"))
            put(hours, new ForecastHour(at(hour), 0, 0, 7, 10, 270, 10, 70));
        return new Forecast(new SiteId("mill"), hours);
    }
}
