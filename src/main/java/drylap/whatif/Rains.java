package drylap.whatif;

import drylap.weather.ForecastHour;

/** Hours with other rain and everything else as it was. */
final class Rains {
    private Rains() {}

    static ForecastHour with(ForecastHour hour, double rainMm, double probability) {
        return new ForecastHour(
                hour.start(),
                rainMm,
                probability,
                hour.windMs(),
                hour.gustMs(),
                hour.windFromDeg(),
                hour.temperatureC(),
                hour.relativeHumidity(),
                probability == hour.rainProbability() ? hour.chanceFrom() : hour.start());
    }
}
