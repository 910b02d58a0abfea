package drylap.assembly;

import drylap.speech.Saying;

/** What the required direction says about a recorded lap. */
public sealed interface LapVerdict {
    record Right(Lap required) implements LapVerdict {}

    /** Water that runs down {@code required.over()} is led behind {@code required.under()}. */
    record Reversed(Lap required) implements LapVerdict {
        public Saying saying() {
            return Saying.of(
                    "reverse lap: {0} lies over {1}, water runs behind the {0}",
                    required.under().saying(), required.over().saying());
        }

        public String words() {
            return saying().words();
        }
    }

    /** The two layers do not meet in this assembly, so nothing can be said. */
    record NoSuchJunction(RecordedLap recorded) implements LapVerdict {}
}
