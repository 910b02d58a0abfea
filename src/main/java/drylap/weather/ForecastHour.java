package drylap.weather;

import java.time.Duration;
import java.time.Instant;

/**
 * What is forecast for the hour from {@code start}.
 *
 * @param rainMm the hour's total
 * @param rainProbability 0 to 1
 * @param windFromDeg where the wind comes from, degrees clockwise from true north
 * @param relativeHumidity percent
 * @param chanceFrom the start of the period that the chance of rain is told for: the hour's own, or an earlier one where one
 *     chance is told for several hours together
 */
public record ForecastHour(
        Instant start,
        double rainMm,
        double rainProbability,
        double windMs,
        double gustMs,
        double windFromDeg,
        double temperatureC,
        double relativeHumidity,
        Instant chanceFrom) {
    public ForecastHour {
        if (chanceFrom.isAfter(start))
            throw new IllegalArgumentException(
                    "the chance of rain of the hour from %s is told from %s on, which is later"
                            .formatted(start, chanceFrom));
    }

    /** With a chance of rain of its own. */
    public ForecastHour(
            Instant start,
            double rainMm,
            double rainProbability,
            double windMs,
            double gustMs,
            double windFromDeg,
            double temperatureC,
            double relativeHumidity) {
        this(start, rainMm, rainProbability, windMs, gustMs, windFromDeg, temperatureC, relativeHumidity, start);
    }

    /** The same weather in the hour from {@code otherStart}. */
    public ForecastHour at(Instant otherStart) {
        return new ForecastHour(
                otherStart,
                rainMm,
                rainProbability,
                windMs,
                gustMs,
                windFromDeg,
                temperatureC,
                relativeHumidity,
                chanceFrom.plus(Duration.between(start, otherStart)));
    }

    /** The same hour, with a chance of rain that is told from another time on. */
    public ForecastHour toldFrom(Instant otherFrom) {
        return new ForecastHour(
                start, rainMm, rainProbability, windMs, gustMs, windFromDeg, temperatureC, relativeHumidity, otherFrom);
    }

    /** Whether one chance of rain is told for this hour and the one before it together. */
    public boolean sharesChanceWith(ForecastHour before) {
        return chanceFrom.equals(before.chanceFrom);
    }
}
