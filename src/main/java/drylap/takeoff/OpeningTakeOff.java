package drylap.takeoff;

import drylap.kernel.OpeningId;
import java.util.List;

/**
 * What is still to go on at an opening.
 *
 * @param beadMm length of sealant beads
 * @param sealantMl what they take
 * @param windows 1 while the window is to be set
 */
public record OpeningTakeOff(
        OpeningId opening,
        List<Strip> strips,
        int panCorners,
        double beadMm,
        double sealantMl,
        int fasteners,
        int windows) {
    public OpeningTakeOff {
        strips = List.copyOf(strips);
    }

    /** Nothing is left to put on. */
    public boolean isEmpty() {
        return strips.isEmpty() && beadMm == 0 && fasteners + windows + panCorners == 0;
    }
}
