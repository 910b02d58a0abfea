package drylap.weather;

import drylap.sites.Terrain;

/**
 * What a building's wall gets of the airfield's driving rain, by ISO 15927-3; all factors but {@code airfield} have no unit.
 *
 * @param airfield litres per square metre of a spell or a year
 * @param roughness what terrain and height leave of the wind
 * @param topography 1 on level ground
 * @param obstruction 1 without an obstacle within 120 m
 * @param wall what the wall's shape lets through
 */
public record WallIndex(double airfield, double roughness, double topography, double obstruction, double wall) {
    public double litresPerSquareMetre() {
        return airfield * roughness * topography * obstruction * wall;
    }

    /** Ground that rises less per length counts as level. */
    static final double LEVEL_BELOW = 0.05;

    private static final double STEEP_ABOVE = 0.3;
    /** Of ISO 15927-3, from memory: distances up to which an obstacle leaves 0.2, 0.3 ... 0.9 of the rain. */
    private static final double[] OBSTACLE_UP_TO_M = {8, 15, 25, 40, 60, 80, 100, 120};

    private static final double OBSTACLE_NEAREST_M = 4;

    /**
     * Topography coefficient C_T, from memory of the standard.
     *
     * @param slope rise of the ground upwind per length
     * @param place 1 at the crest, less away from it, by the charts of EN 1991-1-4
     */
    public static double topography(double slope, double place) {
        if (!(slope >= 0 && place >= 0 && place <= 1))
            throw new IllegalArgumentException(
                    "a slope of %s at place %s; accepted are 0 or more, and 0 to 1".formatted(slope, place));
        return slope < LEVEL_BELOW ? 1 : 1 + 2 * place * Math.min(slope, STEEP_ABOVE);
    }

    /** Obstruction factor O for the distance to the nearest obstacle of similar height in the line of sight. */
    public static double obstruction(double distanceM) {
        if (!(distanceM >= OBSTACLE_NEAREST_M))
            throw new IllegalArgumentException("an obstacle at %s m is nearer than the %s m of the standard's table"
                    .formatted(distanceM, OBSTACLE_NEAREST_M));
        int row = 0;
        while (row < OBSTACLE_UP_TO_M.length && distanceM > OBSTACLE_UP_TO_M[row]) row++;
        return (row + 2) / 10.0;
    }

    /** Terrain roughness coefficient C_R at a height in metres above ground. */
    public static double roughness(Terrain terrain, double heightM) {
        if (!(heightM >= 0)) throw new IllegalArgumentException("height of %s m is below ground".formatted(heightM));
        return switch (terrain) {
            case I -> roughness(0.17, 0.01, Math.max(heightM, 2));
            case II -> roughness(0.19, 0.05, Math.max(heightM, 4));
            case III -> roughness(0.22, 0.3, Math.max(heightM, 8));
            case IV -> roughness(0.24, 1, Math.max(heightM, 16));
        };
    }

    private static double roughness(double factor, double lengthM, double heightM) {
        return factor * Math.log(heightM / lengthM);
    }
}
