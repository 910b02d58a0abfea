package drylap.takeoff;

import drylap.assembly.Length;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * How strips of one width are cut from rolls: on as few rolls as can be, and so that as much as can be is left together on one.
 *
 * @param pan whether sill pans are cut from these rolls, else flashing
 * @param proved no other way is better; else the search for one was ended
 */
public record CutList(boolean pan, double widthMm, double rollMm, List<Roll> rolls, boolean proved) {
    private static final double MM_PER_M = 1_000;

    /** @param left on the roll, in mm */
    public record Roll(List<Strip> strips, double left) {
        public Roll {
            strips = List.copyOf(strips);
        }

        public String words() {
            return strips.stream().map(Strip::words).collect(Collectors.joining("; "));
        }
    }

    public CutList {
        rolls = List.copyOf(rolls);
    }

    /** What is left on the rolls but for the longest rest, which goes into the van again. */
    public double offcutMm() {
        return rolls.stream().mapToDouble(Roll::left).sum() - restMm();
    }

    public double restMm() {
        return rolls.stream().mapToDouble(Roll::left).max().orElse(0);
    }

    /** As it heads the rolls on a list. */
    public String words() {
        return String.format(
                Locale.ROOT,
                "%s %.0f mm (%.0f in) wide, from rolls of %.1f m: %d; offcut %.2f m, longest rest %.2f m%s",
                pan ? "pan strip" : "flashing strip",
                widthMm,
                new Length(widthMm).inches(),
                rollMm / MM_PER_M,
                rolls.size(),
                offcutMm() / MM_PER_M,
                restMm() / MM_PER_M,
                proved ? "" : " (a better way may exist)");
    }

    /** @throws IllegalArgumentException where a strip is longer than a roll */
    public static CutList of(boolean pan, double widthMm, double rollMm, List<Strip> strips) {
        List<Strip> longest = strips.stream()
                .sorted((one, other) -> Double.compare(other.lengthMm(), one.lengthMm()))
                .toList();
        if (!longest.isEmpty() && longest.getFirst().lengthMm() > rollMm)
            throw new IllegalArgumentException(
                    "%s of %s is %.0f mm long and a roll %.0f mm; accepted: a roll that long or longer"
                            .formatted(
                                    longest.getFirst().kind().words(),
                                    longest.getFirst().opening(),
                                    longest.getFirst().lengthMm(),
                                    rollMm));
        Cutting cutting = new Cutting(
                longest.stream().mapToLong(strip -> tenths(strip.lengthMm())).toArray(), tenths(rollMm));
        List<Roll> rolls = cutting.rolls().stream()
                .map(places -> roll(places.stream().map(longest::get).toList(), rollMm))
                .toList();
        return new CutList(pan, widthMm, rollMm, rolls, cutting.proved());
    }

    private static long tenths(double millimetres) {
        return Math.round(millimetres * 10);
    }

    private static Roll roll(List<Strip> strips, double rollMm) {
        return new Roll(
                strips, rollMm - strips.stream().mapToDouble(Strip::lengthMm).sum());
    }
}
