package drylap.weather;

/** Rain that reaches a wall by ASHRAE 160, kilograms (litres) on a square metre in an hour: a second opinion beside ISO 15927-3. */
final class AshraeRain {
    /** F_L in kg s/(m³ mm). */
    private static final double EMPIRICAL = 0.2;

    private AshraeRain() {}

    /**
     * The hourly amount.
     *
     * @param exposure F_E
     * @param deposition F_D: 0.35 below a steep roof, 0.5 below a low one, 1 where water runs off on to the wall
     */
    static double hourly(
            double exposure, double deposition, double windMs, double rainMm, double windFromDeg, double azimuthDeg) {
        return exposure * deposition * EMPIRICAL * windMs * DrivingRain.share(windFromDeg, azimuthDeg) * rainMm;
    }

    /** How a building stands to the wind. */
    enum Stand {
        SEVERE(1.3, 1.3, 1.4, 1.5, 1.5, 1.5, 1.5),
        MEDIUM(1.0, 1.1, 1.2, 1.3, 1.4, 1.5, 1.5),
        SHELTERED(0.7, 0.8, 0.9, 1.1, 1.2, 1.3, 1.5);

        /** The upper ends of the table's rows but the last; the table is from memory, its rows above 10 m least certain. */
        private static final double[] UP_TO_M = {10, 15, 20, 30, 40, 50};

        private final double[] factors;

        Stand(double... factors) {
            this.factors = factors;
        }

        /** F_E at a height above ground. */
        double factor(double heightM) {
            int row = 0;
            while (row < UP_TO_M.length && heightM > UP_TO_M[row]) row++;
            return factors[row];
        }
    }
}
