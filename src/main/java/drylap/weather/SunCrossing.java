package drylap.weather;

import drylap.kernel.GeoPoint;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;

/**
 * Puts right a sunrise or sunset beyond the polar circles. The algorithm finds them in one step from midnight, and where the sun
 * all but grazes the horizon that step is minutes off, once 85; its own position of the sun is not.
 */
final class SunCrossing {
    private static final double ZENITH_DEG = 90.833;
    /** Nearer the equator the sun never grazes the horizon, and the one step is good to a few seconds. */
    private static final double GRAZES_FROM_DEG = 65;

    private static final Duration HALF_A_DAY = Duration.ofHours(12);

    private SunCrossing() {}

    /** The time between noon and midnight when the sun stands on the horizon, in latitudes where it may graze it. */
    static Instant settled(GeoPoint place, Instant noon, Instant event) {
        if (Math.abs(place.latitude()) < GRAZES_FROM_DEG) return event;
        Instant up = noon;
        Instant down = event.isBefore(noon) ? noon.minus(HALF_A_DAY) : noon.plus(HALF_A_DAY);
        if (belowHorizon(place, up) > 0 || belowHorizon(place, down) < 0) return event;
        while (Duration.between(up, down).abs().toMillis() > 500) {
            Instant middle = up.plus(Duration.between(up, down).dividedBy(2));
            if (belowHorizon(place, middle) > 0) down = middle;
            else up = middle;
        }
        return up;
    }

    private static double belowHorizon(GeoPoint place, Instant instant) {
        var time = instant.atZone(ZoneOffset.UTC);
        LocalDate date = time.toLocalDate();
        return SPA.calculateSolarPosition(time, place.latitude(), place.longitude(), 0, DeltaT.estimate(date))
                        .zenithAngle()
                - ZENITH_DEG;
    }
}
