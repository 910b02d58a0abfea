package drylap.takeoff;

import drylap.kernel.OpeningId;
import drylap.speech.Part;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Cuts that are as long as one another and for the same: {@code 4 × jamb flashing 1219 mm}.
 *
 * @param pieces at least one
 */
public record EqualCuts(List<Piece> pieces) {
    /** @param number of the piece in its strip */
    private record Like(Strip.Kind kind, double lengthMm, int number, int of) {
        static Like of(Piece piece) {
            return new Like(piece.strip().kind(), piece.lengthMm(), piece.number(), piece.of());
        }
    }

    public EqualCuts {
        pieces = List.copyOf(pieces);
    }

    /** In the order in which the first of each comes. */
    static List<EqualCuts> of(List<Piece> pieces) {
        Map<Like, List<Piece>> like = new LinkedHashMap<>();
        pieces.forEach(piece ->
                like.computeIfAbsent(Like.of(piece), _ -> new ArrayList<>()).add(piece));
        return like.values().stream().map(EqualCuts::new).toList();
    }

    public int count() {
        return pieces.size();
    }

    public Strip.Kind kind() {
        return pieces.getFirst().strip().kind();
    }

    public double lengthMm() {
        return pieces.getFirst().lengthMm();
    }

    /** For which openings, each once. */
    public List<OpeningId> openings() {
        return pieces.stream().map(piece -> piece.strip().opening()).distinct().toList();
    }

    /** Whether the others are the same but for their openings. */
    boolean same(EqualCuts other) {
        return count() == other.count() && like(other);
    }

    /** Whether the others are as long and for the same, however many. */
    boolean like(EqualCuts other) {
        return Like.of(pieces.getFirst()).equals(Like.of(other.pieces.getFirst()));
    }

    /** How many, of what and how long. */
    public Saying cut() {
        Piece first = pieces.getFirst();
        Saying whole = Saying.of("{0} × {1} {2}", count(), Saying.of(kind().words()), new Part.CutLength(lengthMm()));
        return first.joined() ? Saying.of("{0}, piece {1} of {2}", whole, first.number(), first.of()) : whole;
    }

    /** With the openings that they are for. */
    public Saying saying() {
        return Saying.of("{0} for {1}", cut(), names());
    }

    private String names() {
        return String.join(", ", openings().stream().map(OpeningId::value).toList());
    }
}
