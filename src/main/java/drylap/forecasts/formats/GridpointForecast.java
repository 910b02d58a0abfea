package drylap.forecasts.formats;

import drylap.forecasts.ForecastReading;
import drylap.forecasts.ForecastWords;
import drylap.sites.Site;
import drylap.weather.ForecastInterval;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The raw gridpoint of the US National Weather Service (GeoJSON). Every value holds for an interval of whole hours; rain is
 * the interval's total, and its chance that of rain at any time in it.
 */
public final class GridpointForecast {
    private static final Map<String, Quantity> NEEDED = Map.of(
            "quantitativePrecipitation", Quantity.RAIN,
            "probabilityOfPrecipitation", Quantity.CHANCE,
            "windSpeed", Quantity.WIND,
            "windDirection", Quantity.WIND_FROM,
            "temperature", Quantity.TEMPERATURE);
    private static final Map<String, Quantity> WELCOME =
            Map.of("windGust", Quantity.GUST, "relativeHumidity", Quantity.HUMIDITY);

    private final Findings findings = new Findings();
    private final Hours hours = new Hours(findings);

    private GridpointForecast() {}

    /** Reads a whole answer for the site. */
    public static ForecastReading read(byte[] bytes, Site site) {
        return new GridpointForecast().reading(bytes, site);
    }

    private ForecastReading reading(byte[] bytes, Site site) {
        Json root = Json.read(bytes, findings);
        if (root == null) return findings.refused();
        Json geometry = root.object("geometry");
        if (geometry != null) corner(geometry, site);
        Json properties = root.object("properties");
        if (properties == null) return findings.refused();
        Instant issuedAt = properties.instant("updateTime");
        NEEDED.forEach((name, quantity) -> layer(properties.object(name), quantity));
        WELCOME.forEach((name, quantity) -> {
            if (properties.maybe(name) != null) layer(properties.object(name), quantity);
        });
        return Normal.of(hours, site, issuedAt, findings);
    }

    /** GeoJSON writes the longitude first. */
    private static void corner(Json geometry, Site site) {
        List<Json> rings = geometry.list("coordinates");
        Json ring = rings == null || rings.isEmpty() ? null : rings.getFirst();
        var corner = ring == null ? null : ring.node().get(0);
        if (corner == null
                || !corner.isArray()
                || corner.size() < 2
                || !corner.get(0).isNumber()
                || !corner.get(1).isNumber())
            geometry.wrong(ForecastWords.NO_CORNER.with(), ForecastWords.POLYGON.with());
        else Nearness.check(geometry, corner.get(1).doubleValue(), corner.get(0).doubleValue(), site);
    }

    private void layer(@Nullable Json layer, Quantity quantity) {
        DoubleUnaryOperator unit = layer == null ? null : unit(layer, quantity);
        if (layer == null || unit == null) return;
        List<Json> values = layer.list("values");
        if (values != null) values.forEach(value -> value(value, quantity, unit));
    }

    private static @Nullable DoubleUnaryOperator unit(Json layer, Quantity quantity) {
        if (layer.maybe("uom") == null && quantity.mayOmitUnit()) return DoubleUnaryOperator.identity();
        String uom = layer.text("uom");
        DoubleUnaryOperator unit = uom == null ? null : quantity.from(uom);
        if (uom != null && unit == null)
            layer.wrong(ForecastWords.TOLD_IN_UNIT.with(Findings.shown(uom)), quantity.acceptedUnits());
        return unit;
    }

    /** A null says that nothing is told for the interval. */
    private void value(Json told, Quantity quantity, DoubleUnaryOperator unit) {
        ForecastInterval interval = interval(told);
        if (interval == null || told.node().path("value").isNull()) return;
        Double value = told.number("value");
        if (value == null) return;
        String fault = quantity.fault(unit.applyAsDouble(value));
        String where = told.path() + ".value";
        if (fault != null) findings.add(where, fault, quantity.accepted());
        else
            hours.put(
                    where,
                    quantity,
                    interval.start(),
                    interval.hours(),
                    share(quantity, interval, unit.applyAsDouble(value)));
    }

    private static double share(Quantity quantity, ForecastInterval interval, double value) {
        return quantity == Quantity.RAIN ? interval.hourlyShare(value) : value;
    }

    private static @Nullable ForecastInterval interval(Json told) {
        String text = told.text("validTime");
        if (text == null) return null;
        try {
            ForecastInterval interval = ForecastInterval.parse(text);
            if (interval.length().toHours() <= Hours.MOST) return interval;
            told.wrong(
                    ForecastWords.LONG_INTERVAL.with(Findings.shown(text)), ForecastWords.MOST_HOURS.with(Hours.MOST));
        } catch (IllegalArgumentException unreadable) {
            told.wrong(ForecastWords.NO_INTERVAL.with(Findings.shown(text)), ForecastWords.INTERVAL.with());
        }
        return null;
    }
}
