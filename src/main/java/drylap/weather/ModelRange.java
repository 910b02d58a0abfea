package drylap.weather;

/**
 * Litres on a square metre of wall by three published models that do not agree: for ranking walls and hours, never one figure to
 * promise.
 *
 * @param iso ISO 15927-3 with its factors of terrain, topography, obstruction and wall
 * @param ashrae ASHRAE 160
 * @param drops Straube's driving-rain factor
 */
public record ModelRange(double iso, double ashrae, double drops) {
    static final ModelRange DRY = new ModelRange(0, 0, 0);

    /** What a forecast hour drives on to a wall. */
    static ModelRange of(ForecastHour hour, double azimuthDeg, WallSetting wall) {
        double share = DrivingRain.share(hour.windFromDeg(), azimuthDeg);
        if (share == 0 || hour.rainMm() == 0) return DRY;
        return new ModelRange(
                wall.index(DrivingRain.hourly(hour, azimuthDeg)).litresPerSquareMetre(),
                AshraeRain.hourly(
                        wall.exposure(),
                        wall.deposition(),
                        hour.windMs(),
                        hour.rainMm(),
                        hour.windFromDeg(),
                        azimuthDeg),
                wall.admittance()
                        * Raindrops.drivingFactor(hour.rainMm())
                        * share
                        * wall.windAtHeight(hour.windMs())
                        * hour.rainMm());
    }

    public double least() {
        return Math.min(iso, Math.min(ashrae, drops));
    }

    public double most() {
        return Math.max(iso, Math.max(ashrae, drops));
    }

    ModelRange plus(ModelRange other) {
        return new ModelRange(iso + other.iso, ashrae + other.ashrae, drops + other.drops);
    }
}
