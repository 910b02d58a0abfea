package drylap.pace;

import drylap.kernel.OpeningId;
import java.time.LocalDate;

/**
 * An install whose minutes the log tells.
 *
 * @param planned by the labour table as imported
 */
record TimedInstall(OpeningId opening, Cell cell, LocalDate date, double minutes, int planned) {
    /** How much longer than planned, as a logarithm, so that half and double are equally far off. */
    double logRatio() {
        return Math.log(minutes / planned);
    }
}
