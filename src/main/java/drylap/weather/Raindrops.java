package drylap.weather;

/** How large raindrops are and how fast they fall; rain in millimetres an hour, sizes in millimetres, speeds in metres a second. */
final class Raindrops {
    /** Best 1950: 1 - F = exp(-(x/a)^n), a = A r^p, and W = C r^q of liquid water; as his abstract has them. */
    private static final double SIZE = 1.30;

    private static final double SIZE_POWER = 0.232;
    private static final double SHAPE = 2.25;
    private static final double WATER = 67;
    private static final double WATER_POWER = 0.846;

    /** Best's median by hour as Straube rounds it. */
    private static final double MEDIAN = 1.105;

    /** Laws and Parsons 1943, from memory. */
    private static final double LAWS_PARSONS = 1.24;

    private static final double LAWS_PARSONS_POWER = 0.182;
    /** Dingle and Lee's curve holds from here on and levels off at the fastest; both from memory. */
    private static final double SMALLEST_MM = 0.1;

    private static final double FASTEST_MS = 9.2;
    private static final double CUBIC_MM_A_SECOND_PER_MM_AN_HOUR = 1e6 / 3600;

    private Raindrops() {}

    /** Half of the water is in smaller drops. */
    static double medianMm(double rainMm) {
        return MEDIAN * Math.pow(rainMm, SIZE_POWER);
    }

    /** The size below which this share of the water is. */
    static double sizeMm(double rainMm, double share) {
        return SIZE * Math.pow(rainMm, SIZE_POWER) * Math.pow(-Math.log(1 - share), 1 / SHAPE);
    }

    /** The share of the water in drops below a size. */
    static double shareBelow(double rainMm, double sizeMm) {
        return 1 - Math.exp(-Math.pow(sizeMm / (SIZE * Math.pow(rainMm, SIZE_POWER)), SHAPE));
    }

    /** Cubic millimetres of water in a cubic metre of air. */
    static double waterInAir(double rainMm) {
        return WATER * Math.pow(rainMm, WATER_POWER);
    }

    /** How fast the water comes down on the whole: what Best's two figures leave for the drops' speed. */
    static double speedOfWater(double rainMm) {
        return CUBIC_MM_A_SECOND_PER_MM_AN_HOUR * rainMm / waterInAir(rainMm);
    }

    /** Another measurement of the median, to hold Best's against. */
    static double medianByLawsAndParsonsMm(double rainMm) {
        return LAWS_PARSONS * Math.pow(rainMm, LAWS_PARSONS_POWER);
    }

    /** Terminal velocity of a drop: Dingle and Lee 1972, constants from memory. */
    static double fallSpeed(double sizeMm) {
        double d = Math.max(SMALLEST_MM, sizeMm);
        return Math.min(FASTEST_MS, -0.16603 + 4.91844 * d - 0.888016 * d * d + 0.054888 * d * d * d);
    }

    /** Straube's driving-rain factor in seconds per metre: what a metre a second of wind drives of the rain that falls. */
    static double drivingFactor(double rainMm) {
        return 1 / fallSpeed(medianMm(rainMm));
    }
}
