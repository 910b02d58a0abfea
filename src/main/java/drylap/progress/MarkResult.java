package drylap.progress;

import drylap.assembly.AsBuilt;
import drylap.assembly.Lap;
import drylap.assembly.MarkCheck;
import drylap.assembly.WorkLine;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What became of a mark. */
public sealed interface MarkResult {
    /** It is in the log; the opening now stands like this. */
    record Marked(OpeningState state) implements MarkResult {}

    /**
     * The same mark came before, or someone else was quicker; nothing was added.
     *
     * @param by nobody, where the folder was imported so
     */
    record AlreadyMarked(@Nullable String by, @Nullable Instant at) implements MarkResult {}

    /**
     * It cannot be; nothing was added.
     *
     * @param lap the lap that would have come out the wrong way round, where it is that
     * @param asItWouldBe the opening with that lap, for drawing
     * @param lines the lines that stand in the way: to do first, or to undo first
     */
    record Refused(
            String words, @Nullable Lap lap, @Nullable AsBuilt asItWouldBe, List<WorkLine> lines)
            implements MarkResult {
        public Refused {
            lines = List.copyOf(lines);
        }

        static Refused because(String words) {
            return new Refused(words, null, null, List.of());
        }

        static Refused by(WorkLine line, MarkCheck check) {
            String words = "%s: %s".formatted(line.text(), check.words());
            return switch (check) {
                case MarkCheck.WouldReverse reverse ->
                    new Refused(words, reverse.lap(), reverse.asItWouldBe(), reverse.first());
                case MarkCheck.TooEarly early -> new Refused(words, null, null, early.first());
                default -> because(words);
            };
        }
    }

    /** Not this person's to mark, or not there at all; which of the two is not told. Only {@code markAll} answers so. */
    record NotYours(String words) implements MarkResult {}
}
