package drylap.forecasts;

import drylap.speech.Saying;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** How rain lasts at a site, solved from the forecasts that are kept of it, or why it cannot be. */
public sealed interface LastingRain {
    /** Fewer tellings that say something are an accident of one spell of weather. */
    int LEAST_TELLINGS = 20;

    /** And so are tellings of fewer days. */
    int LEAST_DAYS = 3;

    /**
     * One correlation explains the tellings together.
     *
     * @param rho of neighbouring hours, 0 to 1
     * @param spread its standard error, each day left out in turn
     * @param tellings whose hours leave room for more and less lasting rain
     * @param hours that a telling is of
     * @param days that the tellings are of
     * @param leftOut tellings that no model can give
     * @param source of the newest
     */
    record Solved(double rho, double spread, int tellings, int hours, int days, int leftOut, ForecastSource source)
            implements LastingRain {
        /** As a rule could have it, in hundredths. */
        public double rounded(double most) {
            return Math.min(
                    most,
                    BigDecimal.valueOf(rho).setScale(2, RoundingMode.HALF_UP).doubleValue());
        }

        @Override
        public Saying said() {
            return leftOut == 0
                    ? Saying.of("{0} ± {1} from {2}", two(rho), two(spread), whence())
                    : Saying.of(
                            "{0} ± {1} from {2}; {3} left out that no model can give",
                            two(rho), two(spread), whence(), leftOut);
        }

        /** What it was solved from. */
        public Saying whence() {
            return Saying.of("{0} tellings of {1} hours by {2}", tellings, hours, Saying.of(source.words()));
        }

        private static String two(double value) {
            return String.format(Locale.ROOT, "%.2f", value);
        }
    }

    /** @param said the reason */
    record Unsolved(Saying said) implements LastingRain {}

    Saying said();
}
