package drylap.takeoff;

import drylap.speech.Part;
import drylap.speech.Saying;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How strips of one width are cut from rolls: on as few rolls as can be, and so that as much as can be is left together on one.
 *
 * @param pan whether sill pans are cut from these rolls, else flashing
 * @param lapMm of pieces, where a strip is longer than a roll
 * @param rolls fullest first
 * @param fewest so many rolls at least are needed in whatever way it is cut
 * @param proved no other way is better; else the search for one was ended, or too long to begin
 */
public record CutList(
        boolean pan, double widthMm, double rollMm, double lapMm, List<Roll> rolls, int fewest, boolean proved) {
    /** Beyond, the search for the best would not come to an end; two crews' day is below. */
    private static final int MOST_SEARCHED = 300;

    /** @param left on the roll, in mm */
    public record Roll(List<Piece> pieces, double left) {
        public Roll {
            pieces = List.copyOf(pieces);
        }

        public Saying saying() {
            return Saying.list(
                    "; ", EqualCuts.of(pieces).stream().map(EqualCuts::saying).toList());
        }
    }

    public CutList {
        rolls = List.copyOf(rolls);
    }

    /** @throws IllegalArgumentException where a strip is longer than a roll, and that no longer than a lap */
    public static CutList of(boolean pan, double widthMm, double rollMm, double lapMm, List<Strip> strips) {
        List<Piece> longest = strips.stream()
                .flatMap(strip -> Joints.pieces(strip, rollMm, lapMm).stream())
                .sorted(Comparator.comparing(Piece::lengthMm).reversed())
                .toList();
        long[] lengths = longest.stream()
                .mapToLong(piece -> Joints.tenths(piece.lengthMm()))
                .toArray();
        long roll = Joints.tenths(rollMm);
        int fewest = fewest(lengths, roll);
        if (lengths.length > MOST_SEARCHED)
            return new CutList(
                    pan, widthMm, rollMm, lapMm, rolls(FirstFit.rolls(lengths, roll), longest, rollMm), fewest, false);
        Cutting cutting = new Cutting(lengths, roll);
        List<Roll> rolls = rolls(cutting.rolls(), longest, rollMm);
        boolean proved = cutting.proved();
        return new CutList(pan, widthMm, rollMm, lapMm, rolls, proved ? rolls.size() : fewest, proved);
    }

    /** All of it takes so many whole rolls, and no two that are longer than half a roll come from one. */
    private static int fewest(long[] lengths, long roll) {
        long all = Math.ceilDiv(Arrays.stream(lengths).sum(), roll);
        long alone = Arrays.stream(lengths).filter(length -> 2 * length > roll).count();
        return Math.toIntExact(Math.max(all, alone));
    }

    private static List<Roll> rolls(List<List<Integer>> places, List<Piece> longest, double rollMm) {
        return places.stream()
                .map(of -> roll(of.stream().map(longest::get).toList(), rollMm))
                .sorted(Comparator.comparing(Roll::left))
                .toList();
    }

    private static Roll roll(List<Piece> pieces, double rollMm) {
        double on = pieces.stream().mapToDouble(Piece::lengthMm).sum();
        return new Roll(pieces, Joints.tenths(rollMm - on) / 10.0);
    }

    /** Cuts of all rolls, equal ones together, longest first. */
    public List<EqualCuts> cuts() {
        return EqualCuts.of(rolls.stream()
                .flatMap(roll -> roll.pieces().stream())
                .sorted(Comparator.comparing(Piece::lengthMm).reversed())
                .toList());
    }

    /** Rolls that are cut alike together. */
    public List<AlikeRolls> alike() {
        return AlikeRolls.of(rolls);
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
                stuff(),
                new Part.CutLength(widthMm),
                new Part.Stretch(rollMm, 1),
                rolls.size(),
                new Part.Stretch(offcutMm(), 2),
                new Part.Stretch(restMm(), 2));
        if (proved) return words;
        return rolls.size() == fewest
                ? Saying.of("{0} (no way takes fewer rolls; one that leaves a longer rest may exist)", words)
                : Saying.of("{0} (a better way may exist; none takes fewer than {1} rolls)", words, fewest);
    }

    public Saying stuff() {
        return Saying.of(pan ? "pan strip" : "flashing strip");
    }

    /** How strips that are longer than a roll are joined; nothing where none is. */
    public Optional<Saying> joints() {
        List<Piece> joined = rolls.stream()
                .flatMap(roll -> roll.pieces().stream())
                .filter(Piece::joined)
                .toList();
        if (joined.isEmpty()) return Optional.empty();
        var words = Saying.of(
                "Strips longer than a roll are made of pieces that lap by {0}: the upper over the lower, the lap between the "
                        + "corners of the window and as far from them as it is wide. Common practice, no source; the strip "
                        + "maker's instructions come first.",
                new Part.CutLength(lapMm));
        String near = String.join(
                ", ",
                joined.stream()
                        .filter(piece -> !piece.clear())
                        .map(piece -> piece.strip().opening().value())
                        .distinct()
                        .toList());
        return Optional.of(
                near.isEmpty()
                        ? words
                        : Saying.of(
                                "{0} From these rolls a lap comes nearer to a corner at {1}: take longer rolls.",
                                words, near));
    }
}
