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
