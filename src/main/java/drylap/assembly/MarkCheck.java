package drylap.assembly;

import drylap.speech.Saying;
import java.util.List;

/** What would come of marking a line as done. */
public sealed interface MarkCheck {
    record Legal() implements MarkCheck {}

    record AlreadyDone() implements MarkCheck {}

    /** All that it waits for is done; the hand-off ticks it. */
    record ByRelease() implements MarkCheck {}

    /**
     * A lap would come out the wrong way round, whatever is done afterwards.
     *
     * @param lap as the method requires it
     * @param asItWouldBe the opening with the line done and the late layer put on after it, for drawing
     * @param first what has to be done before the line
     */
    record WouldReverse(Lap lap, AsBuilt asItWouldBe, List<WorkLine> first) implements MarkCheck {
        public WouldReverse {
            first = List.copyOf(first);
        }
    }

    /** No lap would be wrong, but access, the list's order or what one trade owes the next speaks against it. */
    record TooEarly(List<WorkLine> first) implements MarkCheck {
        public TooEarly {
            first = List.copyOf(first);
        }
    }

    default Saying saying() {
        return switch (this) {
            case Legal _ -> Saying.of("may be done now");
            case AlreadyDone _ -> Saying.of("is done already");
            case ByRelease _ -> Saying.of("is done by releasing the opening");
            case WouldReverse reverse ->
                Saying.of(
                        "{0}; first: {1}",
                        new LapVerdict.Reversed(reverse.lap()).saying(), WorkLine.list(reverse.first()));
            case TooEarly(var first) -> Saying.of("comes too early; first: {0}", WorkLine.list(first));
        };
    }

    default String words() {
        return saying().words();
    }
}
