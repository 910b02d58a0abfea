package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Lines;
import drylap.intake.csv.Row;
import drylap.intake.csv.Table;
import drylap.kernel.SiteId;
import drylap.sites.Site;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The rows of {@code forecast.csv}, sorted by hour within each site. */
final class ForecastRows {
    private record Told(int line, ForecastHour hour) {}

    private static final Duration HOUR = Duration.ofHours(1);

    private ForecastRows() {}

    /** One forecast for each site, in the order of the sites; none where a site has no rows. */
    static List<Forecast> read(Table table, List<Site> sites, Known known) {
        Map<SiteId, List<Told>> told = new HashMap<>();
        table.each(row -> {
            SiteId site = new SiteId(row.text("site"));
            known.sites.require(row, "site", site);
            ForecastHour hour = hour(row);
            if (row.sound()) told.computeIfAbsent(site, _ -> new ArrayList<>()).add(new Told(row.line(), hour));
        });
        for (List<Told> hours : told.values())
            hours.sort(Comparator.comparing((Told each) -> each.hour().start()).thenComparingInt(Told::line));
        if (table.sound())
            sites.forEach(site -> checkSteps(table, told.getOrDefault(site.id(), List.of()), site.zone()));
        if (!table.sound()) return List.of();
        return sites.stream().map(site -> forecast(site.id(), told)).toList();
    }

    private static ForecastHour hour(Row row) {
        Instant start = row.instant("hour_start");
        return new ForecastHour(
                start,
                row.number("rain_mm", "mm", 0, 500),
                row.number("rain_probability", "", 0, 1),
                row.number("wind_m_s", "m/s", 0, 150),
                row.number("gust_m_s", "m/s", 0, 150),
                row.number("wind_from_deg", FolderWords.DEGREES.with(), 0, 360),
                row.number("temperature_c", "°C", -90, 70),
                row.number("relative_humidity", FolderWords.PERCENT.with(), 0, 100),
                chanceFrom(row, start));
    }

    /** Where one chance is told for several hours, the first of them; else the hour's own start. */
    private static Instant chanceFrom(Row row, Instant start) {
        Instant from = row.optional("chance_from", row::instant);
        if (from == null || !row.sound()) return start;
        if (!from.isAfter(start)) return from;
        row.wrong("chance_from", FolderWords.AFTER_HOUR.with(), FolderWords.UP_TO.with(row.raw("hour_start")));
        return start;
    }

    private static void checkSteps(Table table, List<Told> hours, ZoneId zone) {
        for (int i = 1; i < hours.size(); i++) {
            Instant expected = hours.get(i - 1).hour().start().plus(HOUR);
            Told told = hours.get(i);
            Instant start = told.hour().start();
            if (start.equals(expected)) {
                checkChance(table, hours.get(i - 1).hour(), told, zone);
                continue;
            }
            String value = String.valueOf(Lines.time(start, zone));
            String wrong = !start.isBefore(expected)
                    ? FolderWords.GAP.with()
                    : start.plus(HOUR).equals(expected)
                            ? FolderWords.HOUR_TWICE.with(hours.get(i - 1).line())
                            : FolderWords.OVERLAPS.with(hours.get(i - 1).line());
            table.report(
                    told.line(),
                    "hour_start",
                    wrong,
                    value,
                    FolderWords.HOUR_FROM.with(String.valueOf(Lines.time(expected, zone))));
        }
    }

    /** Hours that share a chance follow each other and have the same one. */
    private static void checkChance(Table table, ForecastHour before, Told told, ZoneId zone) {
        ForecastHour hour = told.hour();
        boolean shared = hour.sharesChanceWith(before);
        if (!shared && !hour.chanceFrom().equals(hour.start()))
            table.report(
                    told.line(),
                    "chance_from",
                    FolderWords.OTHER_HOUR.with(),
                    String.valueOf(Lines.time(hour.chanceFrom(), zone)),
                    FolderWords.BLANK_OR.with(String.valueOf(Lines.time(before.chanceFrom(), zone))));
        if (shared && hour.rainProbability() != before.rainProbability())
            table.report(
                    told.line(),
                    "rain_probability",
                    FolderWords.DIFFERS.with(),
                    Lines.number(hour.rainProbability()),
                    Lines.number(before.rainProbability()));
    }

    private static Forecast forecast(SiteId site, Map<SiteId, List<Told>> told) {
        return new Forecast(
                site,
                told.getOrDefault(site, List.of()).stream().map(Told::hour).toList());
    }

    static Lines write(List<Forecast> forecasts, Zones zones) {
        boolean shared = forecasts.stream()
                .flatMap(forecast -> forecast.hours().stream())
                .anyMatch(hour -> !hour.chanceFrom().equals(hour.start()));
        Header header = shared ? ContractFiles.FORECAST : ContractFiles.FORECAST.without("chance_from");
        Lines lines = new Lines(header);
        for (Forecast forecast : forecasts)
            for (ForecastHour hour : forecast.hours()) lines.add(cells(forecast.site(), hour, zones, shared));
        return lines;
    }

    private static @Nullable Object[] cells(SiteId site, ForecastHour hour, Zones zones, boolean shared) {
        List<@Nullable Object> cells = new ArrayList<>(Arrays.asList(
                site,
                Lines.time(hour.start(), zones.of(site)),
                Lines.number(hour.rainMm()),
                Lines.number(hour.rainProbability()),
                Lines.number(hour.windMs()),
                Lines.number(hour.gustMs()),
                Lines.number(hour.windFromDeg()),
                Lines.number(hour.temperatureC()),
                Lines.number(hour.relativeHumidity())));
        if (shared)
            cells.add(hour.chanceFrom().equals(hour.start()) ? null : Lines.time(hour.chanceFrom(), zones.of(site)));
        return cells.toArray();
    }
}
