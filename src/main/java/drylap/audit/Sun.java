package drylap.audit;

import drylap.kernel.GeoPoint;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * Sunrise and sunset of a date by the published NOAA equations (after Meeus), solved again at the event itself; within
 * 20 seconds of the reference algorithm SPA between the polar circles.
 */
final class Sun {
    /** Refraction of 34 and half the Sun's disc of 16 minutes of arc below the horizon. */
    private static final double ZENITH = Math.toRadians(90.833);

    private static final double MS_IN_DAY = 86_400_000;
    private static final int ROUNDS = 4;

    /** {@code rise} and {@code set} are far away where the sun stays up, and equal where it stays down. */
    record Day(Instant rise, Instant set) {}

    /** Where the Sun stands: declination in radians and the equation of time in minutes. */
    private record Position(double declination, double equationMin) {
        static Position at(Instant instant) {
            double t = (instant.toEpochMilli() / MS_IN_DAY + 2_440_587.5 - 2_451_545) / 36_525;
            double meanLongitude = Math.toRadians(280.46646 + t * (36_000.76983 + t * 0.0003032));
            double anomaly = Math.toRadians(357.52911 + t * (35_999.05029 - 0.0001537 * t));
            double node = Math.toRadians(125.04 - 1934.136 * t);
            double longitude = meanLongitude
                    + centre(t, anomaly)
                    - Math.toRadians(0.00569)
                    - Math.toRadians(0.00478) * Math.sin(node);
            double seconds = 21.448 - t * (46.815 + t * (0.00059 - t * 0.001813));
            double tilt = Math.toRadians(23 + (26 + seconds / 60) / 60 + 0.00256 * Math.cos(node));
            return new Position(
                    Math.asin(Math.sin(tilt) * Math.sin(longitude)), equation(t, meanLongitude, anomaly, tilt));
        }

        private static double centre(double t, double anomaly) {
            return Math.toRadians(Math.sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t))
                    + Math.sin(2 * anomaly) * (0.019993 - 0.000101 * t)
                    + Math.sin(3 * anomaly) * 0.000289);
        }

        private static double equation(double t, double meanLongitude, double anomaly, double tilt) {
            double e = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
            double y = Math.pow(Math.tan(tilt / 2), 2);
            double angle = y * Math.sin(2 * meanLongitude)
                    - 2 * e * Math.sin(anomaly)
                    + 4 * e * y * Math.sin(anomaly) * Math.cos(2 * meanLongitude)
                    - 0.5 * y * y * Math.sin(4 * meanLongitude)
                    - 1.25 * e * e * Math.sin(2 * anomaly);
            return 4 * Math.toDegrees(angle);
        }
    }

    private Sun() {}

    static Day day(GeoPoint place, ZoneId zone, LocalDate date) {
        Instant noon = noon(place, date.atTime(12, 0).atZone(zone).toInstant());
        double cosine = cosineOfHourAngle(place, Position.at(noon));
        if (cosine >= 1) return new Day(noon, noon);
        if (cosine <= -1) return new Day(noon.minus(Duration.ofDays(1)), noon.plus(Duration.ofDays(1)));
        return new Day(event(place, noon, -1), event(place, noon, 1));
    }

    /** The Sun's transit nearest to an instant. */
    static Instant noon(GeoPoint place, Instant near) {
        double minuteOfDay = (near.toEpochMilli() % MS_IN_DAY) / 60_000;
        double solar = minuteOfDay + 4 * place.longitude() + Position.at(near).equationMin();
        double past = solar - 720 - 1440 * Math.rint((solar - 720) / 1440);
        return plusMinutes(near, -past);
    }

    private static Instant event(GeoPoint place, Instant noon, int side) {
        double equationAtNoon = Position.at(noon).equationMin();
        Instant event = noon;
        for (int round = 0; round < ROUNDS; round++) {
            Position sun = Position.at(event);
            double cosine = Math.clamp(cosineOfHourAngle(place, sun), -1, 1);
            double hourAngleMin = 4 * Math.toDegrees(Math.acos(cosine));
            event = plusMinutes(noon, side * hourAngleMin - (sun.equationMin() - equationAtNoon));
        }
        return event;
    }

    private static double cosineOfHourAngle(GeoPoint place, Position sun) {
        double latitude = Math.toRadians(place.latitude());
        return Math.cos(ZENITH) / (Math.cos(latitude) * Math.cos(sun.declination()))
                - Math.tan(latitude) * Math.tan(sun.declination());
    }

    private static Instant plusMinutes(Instant instant, double minutes) {
        return instant.plusMillis(Math.round(minutes * 60_000));
    }
}
