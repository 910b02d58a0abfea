package drylap.forecasts.formats;

import drylap.forecasts.ForecastWords;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Lays the steps of a Locationforecast out over their hours. */
final class LocationSteps {
    private static final int LONG_STEP_H = 6;
    private static final Map<Quantity, String> NAMES = new EnumMap<>(Map.of(
            Quantity.RAIN, "precipitation_amount",
            Quantity.CHANCE, "probability_of_precipitation",
            Quantity.WIND, "wind_speed",
            Quantity.GUST, "wind_speed_of_gust",
            Quantity.WIND_FROM, "wind_from_direction",
            Quantity.TEMPERATURE, "air_temperature",
            Quantity.HUMIDITY, "relative_humidity"));

    private record SixHours(Instant from, double percent) {}

    private final Hours hours;
    private final Json units;
    private final Map<Quantity, Optional<DoubleUnaryOperator>> known = new EnumMap<>(Quantity.class);
    private @Nullable SixHours sixHours;

    LocationSteps(Hours hours, Json units) {
        this.hours = hours;
        this.units = units;
    }

    /** @param next the time of the step after it; null for the last, which holds as long as its rain does */
    void step(Json step, Instant time, @Nullable Instant next) {
        Json data = step.object("data");
        if (data == null) return;
        Json hour = data.maybe("next_1_hours");
        Json six = data.maybe("next_6_hours");
        int span = next == null ? hour != null ? 1 : six != null ? LONG_STEP_H : 0 : wholeHours(time, next);
        if (span == 0) return;
        instant(data, time, Math.min(span, LONG_STEP_H));
        if (hour != null) rainOfHour(hour, six, time);
        else if (six != null && span >= LONG_STEP_H) rainOfSix(six, time);
    }

    private static int wholeHours(Instant time, Instant next) {
        return (int) Math.min(Integer.MAX_VALUE, Duration.between(time, next).toHours());
    }

    private void instant(Json data, Instant time, int span) {
        Json instant = data.object("instant");
        Json details = instant == null ? null : instant.object("details");
        if (details == null) return;
        for (Quantity quantity : new Quantity[] {Quantity.WIND, Quantity.WIND_FROM, Quantity.TEMPERATURE}) {
            Double value = value(details, quantity);
            if (value != null) hours.put(where(details, quantity), quantity, time, span, value);
        }
        for (Quantity quantity : new Quantity[] {Quantity.GUST, Quantity.HUMIDITY}) {
            Double value = details.maybe(name(quantity)) == null ? null : value(details, quantity);
            if (value != null) hours.put(where(details, quantity), quantity, time, span, value);
        }
    }

    /** Where only the six hours from a step have a chance, it stands for each of their hours, as one chance together. */
    private void rainOfHour(Json hour, @Nullable Json six, Instant time) {
        Json details = hour.object("details");
        Double rain = details == null ? null : value(details, Quantity.RAIN);
        if (details == null || rain == null) return;
        hours.put(where(details, Quantity.RAIN), Quantity.RAIN, time, rain);
        if (details.maybe(name(Quantity.CHANCE)) != null) {
            Double chance = value(details, Quantity.CHANCE);
            if (chance != null) hours.put(where(details, Quantity.CHANCE), Quantity.CHANCE, time, chance);
            SixHours both = six(six, time);
            if (both != null) hours.together(details.path(), time, LONG_STEP_H, both.percent());
            return;
        }
        if (sixHours == null || !time.isBefore(sixHours.from().plus(Duration.ofHours(LONG_STEP_H))))
            sixHours = six(six, time);
        if (sixHours != null) hours.share(details.path(), time, sixHours.percent(), sixHours.from());
    }

    private @Nullable SixHours six(@Nullable Json six, Instant time) {
        Json details = six == null ? null : six.maybe("details");
        if (details == null || details.maybe(name(Quantity.CHANCE)) == null) return null;
        Double chance = value(details, Quantity.CHANCE);
        return chance == null ? null : new SixHours(time, chance);
    }

    private void rainOfSix(Json six, Instant time) {
        Json details = six.object("details");
        Double rain = details == null ? null : value(details, Quantity.RAIN);
        if (details == null || rain == null) return;
        String fault = Quantity.RAIN.fault(rain);
        if (fault != null) details.findings().add(where(details, Quantity.RAIN), fault, Quantity.RAIN.accepted());
        else hours.put(where(details, Quantity.RAIN), Quantity.RAIN, time, LONG_STEP_H, rain / LONG_STEP_H);
        if (details.maybe(name(Quantity.CHANCE)) == null) return;
        Double chance = value(details, Quantity.CHANCE);
        if (chance != null) hours.put(where(details, Quantity.CHANCE), Quantity.CHANCE, time, LONG_STEP_H, chance);
    }

    private @Nullable Double value(Json details, Quantity quantity) {
        Double told = details.number(name(quantity));
        DoubleUnaryOperator unit = known.computeIfAbsent(quantity, this::unit).orElse(null);
        return told == null || unit == null ? null : Double.valueOf(unit.applyAsDouble(told));
    }

    /** An unknown unit is told once, however many values there are in it. */
    private Optional<DoubleUnaryOperator> unit(Quantity quantity) {
        String told = units.text(name(quantity));
        DoubleUnaryOperator unit = told == null ? null : quantity.from(told);
        if (told != null && unit == null)
            units.wrong(
                    ForecastWords.UNKNOWN_UNIT_OF.with(name(quantity), Findings.shown(told)), quantity.acceptedUnits());
        return Optional.ofNullable(unit);
    }

    private static String where(Json details, Quantity quantity) {
        return details.path() + "." + name(quantity);
    }

    private static String name(Quantity quantity) {
        return Objects.requireNonNull(NAMES.get(quantity));
    }
}
