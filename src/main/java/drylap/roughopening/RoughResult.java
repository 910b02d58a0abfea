package drylap.roughopening;

/** What came of recording a measurement. */
public sealed interface RoughResult {
    /** Recorded, now or when it was sent before. */
    record Recorded(RoughMeasurement measurement) implements RoughResult {}

    /** Nothing was recorded. */
    record Refused(String why) implements RoughResult {}
}
