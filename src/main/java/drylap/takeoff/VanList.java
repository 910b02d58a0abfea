package drylap.takeoff;

import drylap.kernel.CrewId;
import drylap.speech.Part;
import drylap.speech.Saying;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

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
    public VanList {
        openings = List.copyOf(openings);
        cuts = List.copyOf(cuts);
    }

    /** Nothing of it is left to put on. */
    public boolean isEmpty() {
        return fasteners + lengthsMm.size() + cartridges == 0;
    }

    /** What is counted. */
    public Saying counts() {
        return Saying.list(
                ", ",
                List.of(
                        Saying.of("{0, plural, one {# window} other {# windows}}", windows),
                        Saying.of("{0, plural, one {# fastener} other {# fasteners}}", fasteners),
                        Saying.of(
                                "{0, plural, one {# cartridge of sealant} other {# cartridges of sealant}}",
                                cartridges),
                        Saying.of("{0, plural, one {# pan corner} other {# pan corners}}", panCorners)));
    }

    /** What is measured. */
    public Saying lengths() {
        return Saying.list(
                ", ",
                lengthsMm.entrySet().stream()
                        .map(one -> Saying.of(
                                "{0} {1}", Saying.of(one.getKey().words()), new Part.Stretch(one.getValue(), 2)))
                        .toList());
    }
}
