package drylap.audit;

import drylap.crews.Crew;
import drylap.crews.TravelTimes;
import drylap.kernel.GeoPoint;
import drylap.sites.Site;

/** Minutes on the road (rule 3.2): as given for that direction, else by the great circle; the same site is 0. */
record Roads(TravelTimes given) {
    private static final double RADIUS_KM = 6371.0088;

    int out(Crew crew, Site site) {
        return minutes(crew.id().value(), crew.base(), site.id().value(), site.place());
    }

    int back(Site site, Crew crew) {
        return minutes(site.id().value(), site.place(), crew.id().value(), crew.base());
    }

    int between(Site from, Site to) {
        return from.id().equals(to.id())
                ? 0
                : minutes(from.id().value(), from.place(), to.id().value(), to.place());
    }

    private int minutes(String from, GeoPoint start, String to, GeoPoint end) {
        Integer asGiven = given.given().get(new TravelTimes.Leg(from, to));
        return asGiven != null ? asGiven : (int) Math.ceil(1.3 * kilometres(start, end) / 40 * 60);
    }

    /** By the angle between two unit vectors, which is exact for near and for opposite places alike. */
    static double kilometres(GeoPoint a, GeoPoint b) {
        double[] u = vector(a);
        double[] v = vector(b);
        double x = u[1] * v[2] - u[2] * v[1];
        double y = u[2] * v[0] - u[0] * v[2];
        double z = u[0] * v[1] - u[1] * v[0];
        double sine = Math.sqrt(x * x + y * y + z * z);
        return RADIUS_KM * Math.atan2(sine, u[0] * v[0] + u[1] * v[1] + u[2] * v[2]);
    }

    private static double[] vector(GeoPoint point) {
        double north = Math.toRadians(point.latitude());
        double east = Math.toRadians(point.longitude());
        return new double[] {Math.cos(north) * Math.cos(east), Math.cos(north) * Math.sin(east), Math.sin(north)};
    }
}
