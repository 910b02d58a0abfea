package drylap.assembly;

/** What the required direction says about a recorded lap. */
public sealed interface LapVerdict {
    record Right(Lap required) implements LapVerdict {}

    /** Water that runs down {@code required.over()} is led behind {@code required.under()}. */
    record Reversed(Lap required) implements LapVerdict {
        public String words() {
            return "reverse lap: %s lies over %s, water runs behind the %s"
                    .formatted(
                            required.under().words(),
                            required.over().words(),
                            required.under().words());
        }
    }

    /** The two layers do not meet in this assembly, so nothing can be said. */
    record NoSuchJunction(RecordedLap recorded) implements LapVerdict {}
}
