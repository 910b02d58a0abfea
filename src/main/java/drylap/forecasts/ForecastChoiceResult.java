package drylap.forecasts;

import drylap.speech.Saying;

/** What came of choosing a site's source. */
public sealed interface ForecastChoiceResult {
    record Chosen(ForecastChoice choice) implements ForecastChoiceResult {}

    record Refused(Saying why) implements ForecastChoiceResult {}

    /** Somebody else chose since; nothing was saved. */
    record ChangedMeanwhile(ForecastChoice newer) implements ForecastChoiceResult {}
}
