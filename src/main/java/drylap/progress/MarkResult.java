package drylap.progress;

import drylap.assembly.AsBuilt;
import drylap.assembly.Lap;
import drylap.assembly.MarkCheck;
import drylap.assembly.WorkLine;
import drylap.speech.Saying;
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
            Saying saying, @Nullable Lap lap, @Nullable AsBuilt asItWouldBe, List<WorkLine> lines)
            implements MarkResult {
        public Refused {
            lines = List.copyOf(lines);
        }

        public String words() {
            return saying.words();
        }

        static Refused because(Saying saying) {
            return new Refused(saying, null, null, List.of());
        }

        static Refused by(WorkLine line, MarkCheck check) {
            var words = Saying.of("{0}: {1}", line.saying(), check.saying());
            return switch (check) {
                case MarkCheck.WouldReverse reverse ->
                    new Refused(words, reverse.lap(), reverse.asItWouldBe(), reverse.first());
                case MarkCheck.TooEarly early -> new Refused(words, null, null, early.first());
                default -> because(words);
            };
        }
    }

    /** Not this person's to mark, or not there at all; which of the two is not told. Only {@code markAll} answers so. */
    record NotYours() implements MarkResult {
        public Saying saying() {
            return Saying.of("this is not yours to mark, or there is no such opening");
        }

        public String words() {
            return saying().words();
        }
    }
}
