package drylap.takeoff;

import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.speech.Part;
import drylap.speech.Saying;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/**
 * What some openings take together.
 *
 * @param openings at how many of them something is left to put on
 * @param lengthsMm by kind of strip, without waste
 * @param sealantMl without waste
 * @param cartridges of sealant, whole ones, waste included
 */
public record Sums(
        int openings,
        int windows,
        Map<Strip.Kind, Double> lengthsMm,
        int panCorners,
        double sealantMl,
        int cartridges,
        int fasteners) {
    public Sums {
        lengthsMm = Collections.unmodifiableMap(new TreeMap<>(lengthsMm));
    }

    static Sums of(Collection<OpeningTakeOff> all, Rules rules) {
        Map<Strip.Kind, Double> lengths = new TreeMap<>();
        for (OpeningTakeOff one : all)
            one.strips().forEach(strip -> lengths.merge(strip.kind(), strip.lengthMm(), Double::sum));
        double millilitres = all.stream().mapToDouble(OpeningTakeOff::sealantMl).sum();
        double wasted = millilitres * (1 + rules.value(Rule.TAKE_OFF_WASTE));
        return new Sums(
                (int) all.stream().filter(one -> !one.isEmpty()).count(),
                sum(all, OpeningTakeOff::windows),
                lengths,
                sum(all, OpeningTakeOff::panCorners),
                millilitres,
                (int) Math.ceil(wasted / rules.value(Rule.CARTRIDGE_ML)),
                sum(all, OpeningTakeOff::fasteners));
    }

    private static int sum(Collection<OpeningTakeOff> all, ToIntFunction<OpeningTakeOff> count) {
        return all.stream().mapToInt(count).sum();
    }

    /** Nothing of it is left to put on. */
    public boolean isEmpty() {
        return openings == 0;
    }

    /** Of one kind of strip, in mm. */
    public double lengthMm(Strip.Kind kind) {
        return lengthsMm.getOrDefault(kind, 0.0);
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
