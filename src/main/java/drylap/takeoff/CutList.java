package drylap.takeoff;

import drylap.speech.Part;
import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.util.List;

/**
 * How strips of one width are cut from rolls: on as few rolls as can be, and so that as much as can be is left together on one.
 *
 * @param pan whether sill pans are cut from these rolls, else flashing
 * @param proved no other way is better; else the search for one was ended
 */
public record CutList(boolean pan, double widthMm, double rollMm, List<Roll> rolls, boolean proved) {
    /** @param left on the roll, in mm */
    public record Roll(List<Strip> strips, double left) {
        public Roll {
            strips = List.copyOf(strips);
        }

        public Saying saying() {
            return Saying.list("; ", strips.stream().map(Strip::saying).toList());
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
    public Saying saying() {
        var words = Saying.of(
                "{0} {1} wide, from rolls of {2}: {3}; offcut {4}, longest rest {5}",
                Saying.of(pan ? "pan strip" : "flashing strip"),
                new Part.CutLength(widthMm),
                new Part.Stretch(rollMm, 1),
                rolls.size(),
                new Part.Stretch(offcutMm(), 2),
                new Part.Stretch(restMm(), 2));
        return proved ? words : Saying.of("{0} (a better way may exist)", words);
    }

    /** @throws IllegalArgumentException where a strip is longer than a roll */
    public static CutList of(boolean pan, double widthMm, double rollMm, List<Strip> strips) {
        List<Strip> longest = strips.stream()
                .sorted((one, other) -> Double.compare(other.lengthMm(), one.lengthMm()))
                .toList();
        if (!longest.isEmpty() && longest.getFirst().lengthMm() > rollMm)
            throw new Unfit(Saying.of(
                    "{0} of {1} is {2} long and a roll {3}; accepted: a roll that long or longer",
                    Saying.of(longest.getFirst().kind().words()),
                    longest.getFirst().opening(),
                    new Part.Length(longest.getFirst().lengthMm()),
                    new Part.Length(rollMm)));
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
