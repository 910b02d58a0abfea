package drylap.takeoff;

import drylap.kernel.OpeningId;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;

/**
 * Rolls that are cut alike and follow one another.
 *
 * @param first number of the first of them, counted from 1
 * @param count how many
 * @param left on each, in mm
 * @param cuts of one of them
 * @param pieces of all of them
 */
public record AlikeRolls(int first, int count, double left, List<EqualCuts> cuts, List<Piece> pieces) {
    public AlikeRolls {
        cuts = List.copyOf(cuts);
        pieces = List.copyOf(pieces);
    }

    static List<AlikeRolls> of(List<CutList.Roll> rolls) {
        List<AlikeRolls> alike = new ArrayList<>();
        int number = 0;
        for (CutList.Roll roll : rolls) {
            number++;
            AlikeRolls one = new AlikeRolls(number, 1, roll.left(), EqualCuts.of(roll.pieces()), roll.pieces());
            if (!alike.isEmpty() && alike.getLast().same(one))
                alike.add(alike.removeLast().and(one));
            else alike.add(one);
        }
        return alike;
    }

    private boolean same(AlikeRolls other) {
        if (cuts.size() != other.cuts.size()) return false;
        for (int i = 0; i < cuts.size(); i++) if (!cuts.get(i).same(other.cuts.get(i))) return false;
        return true;
    }

    private AlikeRolls and(AlikeRolls next) {
        List<Piece> all = new ArrayList<>(pieces);
        all.addAll(next.pieces);
        return new AlikeRolls(first, count + 1, left, cuts, all);
    }

    /** What each of them is cut to: with the openings while it is one roll, else what is cut, for it is alike. */
    public Saying saying() {
        return Saying.list(
                "; ",
                cuts.stream().map(cut -> count == 1 ? cut.saying() : cut.cut()).toList());
    }

    /** Which of the rolls they are. */
    public Saying name() {
        return count == 1
                ? Saying.of("Roll {0}", first)
                : Saying.of("Rolls {0} to {1}, each", first, first + count - 1);
    }

    /** Such as "3" or "3–7". */
    public String numbers() {
        return count == 1 ? String.valueOf(first) : "%d–%d".formatted(first, first + count - 1);
    }

    /** For which openings some cuts of one of them are on all of them, each once. */
    public List<OpeningId> openings(EqualCuts cuts) {
        return EqualCuts.of(pieces).stream()
                .filter(cuts::like)
                .flatMap(all -> all.openings().stream())
                .toList();
    }
}
