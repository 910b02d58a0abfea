package drylap.weather;

import drylap.kernel.FacadeId;
import drylap.kernel.GeoPoint;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.sites.Facade;
import drylap.sites.Site;
import drylap.sites.Terrain;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** A mild, dry forecast of two days for a site on the American west coast, to be spoilt hour by hour. */
record Sky(List<ForecastHour> hours, Rules rules) {
    static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");
    static final LocalDate DAY = LocalDate.parse("2026-04-13");
    static final Site SITE = new Site(new SiteId("quay"), "Quay", new GeoPoint(47.6062, -122.3321), ZONE, Terrain.III);
    static final Facade NORTH = facade("north", 0);
    static final Facade EAST = facade("east", 90);
    static final Facade WEST = facade("west", 270);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    static Sky mild() {
        List<ForecastHour> hours = new ArrayList<>();
        for (int hour = 0; hour < 48; hour++)
            hours.add(new ForecastHour(midnight(DAY).plus(Duration.ofHours(hour)), 0, 0, 3, 5, 90, 10, 70));
        return new Sky(hours, Rules.STANDARD);
    }

    static Facade facade(String name, double azimuth) {
        return new Facade(new FacadeId(SITE.id(), name), azimuth, null);
    }

    static Instant midnight(LocalDate date) {
        return date.atStartOfDay(ZONE).toInstant();
    }

    static Instant clock(String time) {
        return DAY.atTime(LocalTime.parse(time)).atZone(ZONE).toInstant();
    }

    Sky at(int hour, UnaryOperator<ForecastHour> change) {
        List<ForecastHour> changed = new ArrayList<>(hours);
        changed.set(hour, change.apply(hours.get(hour)));
        return new Sky(changed, rules);
    }

    /** Rain of 5 mm in a wind of 6 m/s from the east: 5.6 L/m² on an east wall, none on a west one. */
    Sky rain(int hour) {
        return at(hour, rain(5, 0.8));
    }

    Sky temperature(int hour, double celsius) {
        return at(
                hour,
                h -> new ForecastHour(
                        h.start(),
                        h.rainMm(),
                        h.rainProbability(),
                        h.windMs(),
                        h.gustMs(),
                        h.windFromDeg(),
                        celsius,
                        h.relativeHumidity()));
    }

    Sky gust(int hour, double gustMs) {
        return at(
                hour,
                h -> new ForecastHour(
                        h.start(),
                        h.rainMm(),
                        h.rainProbability(),
                        h.windMs(),
                        gustMs,
                        h.windFromDeg(),
                        h.temperatureC(),
                        h.relativeHumidity()));
    }

    static UnaryOperator<ForecastHour> rain(double mm, double probability) {
        return h -> new ForecastHour(h.start(), mm, probability, 6, h.gustMs(), 90, h.temperatureC(), 95);
    }

    Sky with(Rule rule, double value) {
        return new Sky(hours, rules.with(rule, value));
    }

    Sky only(int from, int until) {
        return new Sky(hours.subList(from, until), rules);
    }

    SiteWeather weather() {
        return SiteWeather.of(SITE, new Forecast(SITE.id(), hours), rules, day(DAY));
    }

    /** The day's open windows as the site's clock shows them. */
    List<String> open(Task task, Facade facade) {
        return clock(weather().openHours(facade).windows(task));
    }

    static TimeWindow day(LocalDate date) {
        return new TimeWindow(midnight(date), midnight(date.plusDays(1)));
    }

    static List<String> clock(List<TimeWindow> windows) {
        return windows.stream()
                .map(window -> CLOCK.format(window.from().atZone(ZONE)) + "-"
                        + CLOCK.format(window.until().atZone(ZONE)))
                .toList();
    }
}
