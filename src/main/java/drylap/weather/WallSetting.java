package drylap.weather;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.sites.Terrain;

/**
 * What is taken of a wall and its surroundings to reckon the rain that reaches it. None of it is measured: the factors are
 * defaults that a contractor may change, and the tables that they enter are from memory of their standards.
 *
 * @param heightM of its highest row of openings above ground
 * @param upwindSlope rise of the ground upwind per length
 * @param obstacleM distance to the nearest obstacle of similar height in the line of sight
 * @param wallFactor W of ISO 15927-3
 * @param deposition F_D of ASHRAE 160
 * @param admittance Straube's rain admittance factor
 */
public record WallSetting(
        Terrain terrain,
        double heightM,
        double upwindSlope,
        double obstacleM,
        double wallFactor,
        double deposition,
        double admittance) {
    /** Near enough an obstacle shelters a wall to ASHRAE 160; deduced. */
    private static final double SHELTERED_WITHIN_M = 25;

    /** Of a wall so many levels high. */
    public static WallSetting of(Terrain terrain, int levels, Rules rules) {
        return new WallSetting(
                terrain,
                levels * rules.value(Rule.STOREY_M),
                rules.value(Rule.UPWIND_SLOPE),
                rules.value(Rule.OBSTACLE_M),
                rules.value(Rule.WALL_FACTOR),
                rules.value(Rule.RAIN_DEPOSITION),
                rules.value(Rule.RAIN_ADMITTANCE));
    }

    /** What ISO 15927-3 leaves of the airfield's figure. */
    WallIndex index(double airfield) {
        return new WallIndex(
                airfield,
                WallIndex.roughness(terrain, heightM),
                WallIndex.topography(upwindSlope, 1),
                WallIndex.obstruction(obstacleM),
                wallFactor);
    }

    /** F_E of ASHRAE 160, whose three kinds are told in words; which terrain is which is deduced. */
    double exposure() {
        return stand().factor(heightM);
    }

    /** The wind at the wall's height for a wind at 10 m in open country; the profile of ISO 15927-3, deduced for this use. */
    double windAtHeight(double windMs) {
        return windMs * WallIndex.roughness(terrain, heightM) * WallIndex.topography(upwindSlope, 1);
    }

    AshraeRain.Stand stand() {
        if (terrain == Terrain.IV || obstacleM <= SHELTERED_WITHIN_M) return AshraeRain.Stand.SHELTERED;
        if (terrain == Terrain.I || upwindSlope >= WallIndex.LEVEL_BELOW) return AshraeRain.Stand.SEVERE;
        return AshraeRain.Stand.MEDIUM;
    }
}
