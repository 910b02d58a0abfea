package drylap.weather;

import java.time.Instant;

/**
 * What is forecast for the hour from {@code start}.
 *
 * @param rainMm the hour's total
 * @param rainProbability 0 to 1
 * @param windFromDeg where the wind comes from, degrees clockwise from true north
 * @param relativeHumidity percent
 */
public record ForecastHour(
        Instant start,
        double rainMm,
        double rainProbability,
        double windMs,
        double gustMs,
        double windFromDeg,
        double temperatureC,
        double relativeHumidity) {
    /** The same weather in the hour from {@code otherStart}. */
    public ForecastHour at(Instant otherStart) {
        return new ForecastHour(
                otherStart, rainMm, rainProbability, windMs, gustMs, windFromDeg, temperatureC, relativeHumidity);
    }
}
