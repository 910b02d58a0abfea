package drylap.weather;

/**
 * The chance, 0 to 1, of rain at any time in a row of hours, with what no model can leave.
 *
 * @param atLeast the likeliest hour alone (Fréchet)
 * @param likely by a chain of hours that knows how rain persists
 * @param independent as if no hour knew of the others: too high, because wet hours come together
 * @param atMost hours that never come together (Fréchet)
 */
public record OddsOfRain(double atLeast, double likely, double independent, double atMost) {
    /** Of hours, or of periods with one chance each, whose neighbours correlate by {@code rho}. */
    public static OddsOfRain of(double rho, double... chances) {
        return new OddsOfRain(
                RainChance.atLeast(chances),
                RainChance.persistent(rho, chances),
                RainChance.independent(chances),
                RainChance.atMost(chances));
    }
}
