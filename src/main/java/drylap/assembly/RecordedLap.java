package drylap.assembly;

/** A lap as it was found on the wall, right or wrong. */
public record RecordedLap(Layer over, Layer under) {}
