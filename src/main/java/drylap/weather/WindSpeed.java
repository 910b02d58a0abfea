package drylap.weather;

/** The speed of wind, at least 0; forecasts state it in several units, the rules in metres per second. */
public record WindSpeed(double metresPerSecond) {
    private static final double KILOMETRES_PER_HOUR = 1 / 3.6;
    /** The international mile of 1609.344 m in an hour. */
    private static final double MILES_PER_HOUR = 0.44704;
    /** The international nautical mile of 1852 m in an hour. */
    private static final double KNOTS = 1852 / 3600.0;

    public WindSpeed {
        if (!(metresPerSecond >= 0 && metresPerSecond < Double.POSITIVE_INFINITY))
            throw new IllegalArgumentException("a wind of %s m/s is below 0 or no number".formatted(metresPerSecond));
    }

    public static WindSpeed ofKilometresPerHour(double speed) {
        return new WindSpeed(speed * KILOMETRES_PER_HOUR);
    }

    public static WindSpeed ofMilesPerHour(double speed) {
        return new WindSpeed(speed * MILES_PER_HOUR);
    }

    public static WindSpeed ofKnots(double speed) {
        return new WindSpeed(speed * KNOTS);
    }
}
