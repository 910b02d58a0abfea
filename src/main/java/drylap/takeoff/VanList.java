package drylap.takeoff;

import drylap.kernel.CrewId;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a window crew loads for a day.
 *
 * @param openings in the order in which the crew comes to them
 * @param lengthsMm by kind of strip, without waste
 * @param cartridges of sealant, whole ones, waste included
 */
public record VanList(
        CrewId crew,
        LocalDate date,
        List<OpeningTakeOff> openings,
        Map<Strip.Kind, Double> lengthsMm,
        int panCorners,
        int cartridges,
        int fasteners,
        int windows,
        List<CutList> cuts) {
    private static final double MM_PER_M = 1_000;

    public VanList {
        openings = List.copyOf(openings);
        cuts = List.copyOf(cuts);
    }

    /** Nothing of it is left to put on. */
    public boolean isEmpty() {
        return fasteners + lengthsMm.size() + cartridges == 0;
    }

    /** What is counted. */
    public String counts() {
        return "%s, %s, %s of sealant, %s"
                .formatted(
                        some(windows, "window"),
                        some(fasteners, "fastener"),
                        some(cartridges, "cartridge"),
                        some(panCorners, "pan corner"));
    }

    private static String some(int count, String what) {
        return "%d %s%s".formatted(count, what, count == 1 ? "" : "s");
    }

    /** What is measured. */
    public String lengths() {
        return lengthsMm.entrySet().stream()
                .map(one -> String.format(Locale.ROOT, "%s %.2f m", one.getKey().words(), one.getValue() / MM_PER_M))
                .collect(Collectors.joining(", "));
    }
}
