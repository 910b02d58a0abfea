package drylap.forecasts.formats;

import drylap.forecasts.ForecastReading;
import drylap.forecasts.ForecastWords;
import drylap.sites.Site;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Open-Meteo's hourly JSON. Rain and its chance belong to the hour that ends at their time, the rest is of that moment. Local
 * times run at one fixed offset, also over a change of the clocks.
 */
public final class OpenMeteoForecast {
    /** @param old its name before 2023 */
    private record Column(Quantity quantity, String name, String old, boolean needed) {}

    private static final List<Column> COLUMNS = List.of(
            new Column(Quantity.RAIN, "precipitation", "precipitation", true),
            new Column(Quantity.CHANCE, "precipitation_probability", "precipitation_probability", true),
            new Column(Quantity.WIND, "wind_speed_10m", "windspeed_10m", true),
            new Column(Quantity.GUST, "wind_gusts_10m", "windgusts_10m", true),
            new Column(Quantity.WIND_FROM, "wind_direction_10m", "winddirection_10m", true),
            new Column(Quantity.TEMPERATURE, "temperature_2m", "temperature_2m", true),
            new Column(Quantity.HUMIDITY, "relative_humidity_2m", "relativehumidity_2m", false));

    private final Findings findings = new Findings();
    private final Hours hours = new Hours(findings);

    private OpenMeteoForecast() {}

    /** Reads a whole answer for the site. It does not say when the forecast was made. */
    public static ForecastReading read(byte[] bytes, Site site) {
        return new OpenMeteoForecast().reading(bytes, site);
    }

    private ForecastReading reading(byte[] bytes, Site site) {
        Json root = Json.read(bytes, findings);
        if (root == null || refusal(root)) return findings.refused();
        Double latitude = root.number("latitude");
        Double longitude = root.number("longitude");
        if (latitude != null && longitude != null) Nearness.check(root, latitude, longitude, site);
        Json units = root.object("hourly_units");
        Json hourly = root.object("hourly");
        if (units == null || hourly == null) return findings.refused();
        List<Instant> times = times(root, units, hourly);
        if (!findings.none()) return findings.refused();
        COLUMNS.forEach(column -> column(column, units, hourly, times));
        return Normal.of(hours, site, null, findings);
    }

    private boolean refusal(Json root) {
        boolean refused = root.node().path("error").asBoolean(false);
        if (refused) {
            String reason = root.node().path("reason").asString(ForecastWords.NO_REASON.with());
            findings.add(
                    "reason", ForecastWords.SOURCE_REFUSES.with(Findings.shown(reason)), ForecastWords.HOURLY.with());
        }
        return refused;
    }

    private List<Instant> times(Json root, Json units, Json hourly) {
        List<Json> told = hourly.list("time");
        String format = units.text("time");
        if (told == null || format == null) return List.of();
        boolean unix = format.equals("unixtime");
        if (!unix && !format.equals("iso8601"))
            findings.add("hourly_units.time", ForecastWords.UNKNOWN.with(), ForecastWords.TIME_FORMATS.with());
        ZoneOffset offset = unix ? ZoneOffset.UTC : offset(root);
        if (!findings.none() || offset == null) return List.of();
        List<Instant> times = new ArrayList<>();
        for (Json one : told) {
            Instant time = unix ? unix(one) : local(one, offset);
            if (time == null) return List.of();
            if (!times.isEmpty() && !time.equals(times.getLast().plus(Hours.HOUR))) {
                one.wrong(ForecastWords.NOT_NEXT.with(time, times.getLast()), ForecastWords.NEXT.with());
                return List.of();
            }
            times.add(time);
        }
        return times;
    }

    private @Nullable ZoneOffset offset(Json root) {
        Double seconds = root.number("utc_offset_seconds");
        if (seconds == null) return null;
        if (Math.abs(seconds) <= 18 * 3600 && seconds == Math.rint(seconds))
            return ZoneOffset.ofTotalSeconds(seconds.intValue());
        findings.add("utc_offset_seconds", ForecastWords.TOO_LARGE.with(seconds), ForecastWords.MOST_OFFSET.with());
        return null;
    }

    private static @Nullable Instant unix(Json one) {
        Double seconds = one.number();
        if (seconds == null) return null;
        if (seconds >= 0 && seconds < 1e10) return Instant.ofEpochSecond(seconds.longValue());
        one.wrong(ForecastWords.NO_TIME.with(seconds), ForecastWords.SECONDS.with());
        return null;
    }

    private static @Nullable Instant local(Json one, ZoneOffset offset) {
        String text = one.text();
        if (text == null) return null;
        try {
            return LocalDateTime.parse(text).toInstant(offset);
        } catch (DateTimeException unreadable) {
            one.wrong(ForecastWords.NO_TIME.with(Findings.shown(text)), ForecastWords.LOCAL_TIME.with());
            return null;
        }
    }

    private void column(Column column, Json units, Json hourly, List<Instant> times) {
        boolean old = hourly.maybe(column.name()) == null && hourly.maybe(column.old()) != null;
        String name = old ? column.old() : column.name();
        if (!column.needed() && hourly.maybe(name) == null) return;
        List<Json> values = hourly.list(name);
        DoubleUnaryOperator unit = unit(units, name, column.quantity());
        if (values == null || unit == null) return;
        if (values.size() != times.size()) {
            findings.add(
                    "hourly." + name,
                    ForecastWords.VALUES_FOR_TIMES.with(values.size(), times.size()),
                    ForecastWords.VALUE_FOR_TIME.with());
            return;
        }
        for (int i = 0; i < values.size(); i++) {
            Json value = values.get(i);
            Double number = value.isNull() ? null : value.number();
            if (number != null) put(column.quantity(), value.path(), times.get(i), unit.applyAsDouble(number));
        }
    }

    private @Nullable DoubleUnaryOperator unit(Json units, String name, Quantity quantity) {
        String told = units.text(name);
        DoubleUnaryOperator unit = told == null ? null : quantity.from(told);
        if (told != null && unit == null)
            findings.add(
                    "hourly_units." + name,
                    ForecastWords.UNKNOWN_UNIT.with(Findings.shown(told)),
                    quantity.acceptedUnits());
        return unit;
    }

    /** Gusts are the most of the hour before their time (from memory), or of that moment: both hours beside it get them. */
    private void put(Quantity quantity, String where, Instant time, double value) {
        switch (quantity) {
            case RAIN, CHANCE -> hours.put(where, quantity, time.minus(Hours.HOUR), value);
            case GUST -> {
                Hours.Told before = hours.of(quantity).remove(time.minus(Hours.HOUR));
                double larger = before == null ? value : Math.max(before.value(), value);
                hours.put(where, quantity, time.minus(Hours.HOUR), larger);
                hours.put(where, quantity, time, value);
            }
            default -> hours.put(where, Objects.requireNonNull(quantity), time, value);
        }
    }
}
