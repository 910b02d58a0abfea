package drylap.forecasts.formats;

import drylap.forecasts.ForecastWords;
import drylap.weather.WindSpeed;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** What is told of an hour: its unit here, the units it is told in elsewhere, and what it may be. */
enum Quantity {
    RAIN(ForecastWords.RAIN, "mm", 0, 500, Units.LENGTH),
    CHANCE(ForecastWords.CHANCE, ForecastWords.PERCENT.with(), 0, 100, Units.PERCENT),
    WIND(ForecastWords.WIND, "m/s", 0, 150, Units.SPEED),
    GUST(ForecastWords.GUST, "m/s", 0, 150, Units.SPEED),
    WIND_FROM(ForecastWords.WIND_FROM, ForecastWords.DEGREES.with(), 0, 360, Units.ANGLE),
    TEMPERATURE(ForecastWords.TEMPERATURE, "°C", -90, 70, Units.HEAT),
    HUMIDITY(ForecastWords.HUMIDITY, ForecastWords.PERCENT.with(), 0, 100, Units.PERCENT);

    private final String words;
    private final String unit;
    private final double least;
    private final double most;
    private final Map<String, DoubleUnaryOperator> units;

    Quantity(ForecastWords words, String unit, double least, double most, Map<String, DoubleUnaryOperator> units) {
        this.words = words.with();
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.units = units;
    }

    String words() {
        return words;
    }

    /** How a value told in that unit becomes one in ours; null where the unit is none of this quantity's. */
    @Nullable
    DoubleUnaryOperator from(String told) {
        return units.get(told.replaceFirst("^(wmoUnit|unit|uc):", ""));
    }

    /** A wrong guess at a speed or an amount would turn a stop into a go; of a share or an angle there is no second unit. */
    boolean mayOmitUnit() {
        return units == Units.PERCENT || units == Units.ANGLE;
    }

    String acceptedUnits() {
        return ForecastWords.UNITS.with(
                String.join(", ", units.keySet().stream().sorted().toList()));
    }

    /** What is wrong with a value in our unit; null where nothing is. */
    @Nullable
    String fault(double value) {
        if (!Double.isFinite(value)) return ForecastWords.NOT_FINITE.with();
        if (value < least)
            return value < 0 && least == 0 ? ForecastWords.NEGATIVE.with(number(value)) : tooSmall(value);
        return value > most ? ForecastWords.TOO_LARGE.with(number(value)) : null;
    }

    private static String tooSmall(double value) {
        return ForecastWords.TOO_SMALL.with(number(value));
    }

    String accepted() {
        return ForecastWords.RANGE.with(unit, number(least), number(most));
    }

    static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    /** Each source's own spelling. Open-Meteo writes mp/h and kn where one asks for them (from memory). */
    private static final class Units {
        static final Map<String, DoubleUnaryOperator> PERCENT =
                Map.of("percent", DoubleUnaryOperator.identity(), "%", DoubleUnaryOperator.identity());
        static final Map<String, DoubleUnaryOperator> ANGLE = Map.of(
                "degree_(angle)", DoubleUnaryOperator.identity(),
                "degrees", DoubleUnaryOperator.identity(),
                "°", DoubleUnaryOperator.identity());
        static final Map<String, DoubleUnaryOperator> LENGTH =
                Map.of("mm", DoubleUnaryOperator.identity(), "inch", inches -> inches * 25.4);
        static final Map<String, DoubleUnaryOperator> HEAT = Map.of(
                "degC",
                DoubleUnaryOperator.identity(),
                "celsius",
                DoubleUnaryOperator.identity(),
                "°C",
                DoubleUnaryOperator.identity(),
                "degF",
                Units::fahrenheit,
                "°F",
                Units::fahrenheit,
                "K",
                kelvin -> kelvin - 273.15);
        static final Map<String, DoubleUnaryOperator> SPEED = Map.of(
                "m/s", DoubleUnaryOperator.identity(),
                "m_s-1", DoubleUnaryOperator.identity(),
                "km/h", Units::kilometres,
                "km_h-1", Units::kilometres,
                "mp/h", Units::miles,
                "mph", Units::miles,
                "kn", Units::knots);

        private static double fahrenheit(double degrees) {
            return (degrees - 32) / 1.8;
        }

        // A negative speed is told as such by the quantity's own range.
        private static double kilometres(double speed) {
            return Math.copySign(WindSpeed.ofKilometresPerHour(Math.abs(speed)).metresPerSecond(), speed);
        }

        private static double miles(double speed) {
            return Math.copySign(WindSpeed.ofMilesPerHour(Math.abs(speed)).metresPerSecond(), speed);
        }

        private static double knots(double speed) {
            return Math.copySign(WindSpeed.ofKnots(Math.abs(speed)).metresPerSecond(), speed);
        }
    }
}
