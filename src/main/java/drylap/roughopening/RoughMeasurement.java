package drylap.roughopening;

import drylap.kernel.OpeningId;
import java.time.Instant;
import java.util.UUID;

/**
 * One time that a rough opening was measured.
 *
 * @param id made by whoever sends it, so that sending it twice records it once
 * @param verdict by the rules and the design of now
 */
public record RoughMeasurement(
        UUID id, OpeningId opening, RoughSizes sizes, String note, String person, Instant at, RoughVerdict verdict) {}
