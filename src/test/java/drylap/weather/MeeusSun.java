package drylap.weather;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.tan;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;

import drylap.kernel.GeoPoint;
import java.time.Duration;
import java.time.Instant;

/** A second sun beside the library: the low-precision formulas of Meeus, Astronomical Algorithms, chapters 25 and 28. */
record MeeusSun(double julianDay) {
    private static final double EPOCH_2000 = 2451545;
    private static final double ZENITH_OF_RISING = 90.833;

    static MeeusSun at(Instant instant) {
        return new MeeusSun(2440587.5 + instant.toEpochMilli() / 86_400_000.0);
    }

    private double centuries() {
        return (julianDay - EPOCH_2000) / 36525;
    }

    private double meanLongitude() {
        double t = centuries();
        return 280.46646 + 36000.76983 * t + 0.0003032 * t * t;
    }

    private double node() {
        return toRadians(125.04 - 1934.136 * centuries());
    }

    double apparentLongitude() {
        double t = centuries();
        double anomaly = toRadians(357.52911 + 35999.05029 * t - 0.0001537 * t * t);
        double centre = (1.914602 - 0.004817 * t - 0.000014 * t * t) * sin(anomaly)
                + (0.019993 - 0.000101 * t) * sin(2 * anomaly)
                + 0.000289 * sin(3 * anomaly);
        return positive(meanLongitude() + centre - 0.00569 - 0.00478 * sin(node()));
    }

    private double obliquity() {
        double t = centuries();
        return toRadians(
                23 + 26 / 60.0 + 21.448 / 3600 - (46.8150 * t + 0.00059 * t * t) / 3600 + 0.00256 * cos(node()));
    }

    double rightAscension() {
        double longitude = toRadians(apparentLongitude());
        return positive(toDegrees(Math.atan2(cos(obliquity()) * sin(longitude), cos(longitude))));
    }

    double declination() {
        return toDegrees(Math.asin(sin(obliquity()) * sin(toRadians(apparentLongitude()))));
    }

    /** Apparent less mean sun, in degrees of hour angle. */
    private double equationOfTime() {
        return Math.IEEEremainder(meanLongitude() - 0.0057183 - rightAscension(), 360);
    }

    /** The sunrise (-1) or sunset (+1) nearest the solar noon of a place, worked again at the time it gives. */
    static Instant crossing(GeoPoint place, Instant noon, int side) {
        Instant event = noon;
        for (int turn = 0; turn < 4; turn++) event = at(event).crossing(place, noon, side, event);
        return event;
    }

    private Instant crossing(GeoPoint place, Instant noon, int side, Instant event) {
        double latitude = toRadians(place.latitude());
        double declination = toRadians(declination());
        double hourAngle = toDegrees(Math.acos(cos(toRadians(ZENITH_OF_RISING)) / (cos(latitude) * cos(declination))
                - tan(latitude) * tan(declination)));
        double secondOfDay = event.getEpochSecond() % 86_400;
        double now = Math.IEEEremainder(secondOfDay / 240 + 180 + place.longitude() + equationOfTime(), 360);
        double correction = side * hourAngle - now;
        double turned = event.equals(noon) ? correction : Math.IEEEremainder(correction, 360);
        return event.plus(Duration.ofMillis(Math.round(turned * 240_000)));
    }

    private static double positive(double degrees) {
        return degrees - 360 * Math.floor(degrees / 360);
    }
}
