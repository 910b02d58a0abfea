package drylap.kernel;

/** A place on Earth in degrees, north and east positive. */
public record GeoPoint(double latitude, double longitude) {
    /** Mean Earth radius R1 of the GRS 80 ellipsoid (IUGG). */
    public static final double EARTH_RADIUS_KM = 6371.0088;

    public GeoPoint {
        if (!(latitude >= -90 && latitude <= 90))
            throw new IllegalArgumentException("latitude %s is outside -90..90".formatted(latitude));
        if (!(longitude >= -180 && longitude <= 180))
            throw new IllegalArgumentException("longitude %s is outside -180..180".formatted(longitude));
    }

    /** Great-circle distance in kilometres, by the haversine formula. */
    public double kilometresTo(GeoPoint other) {
        double north = Math.toRadians(other.latitude - latitude);
        double east = Math.toRadians(other.longitude - longitude);
        double half = Math.pow(Math.sin(north / 2), 2)
                + Math.cos(Math.toRadians(latitude))
                        * Math.cos(Math.toRadians(other.latitude))
                        * Math.pow(Math.sin(east / 2), 2);
        return 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(half)));
    }
}
