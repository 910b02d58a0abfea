package drylap.roughopening;

import drylap.speech.Saying;

/** What came of recording a measurement. */
public sealed interface RoughResult {
    /** Recorded, now or when it was sent before. */
    record Recorded(RoughMeasurement measurement) implements RoughResult {}

    /** Nothing was recorded. */
    record Refused(Saying why) implements RoughResult {}
}
