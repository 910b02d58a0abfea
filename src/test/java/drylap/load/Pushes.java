package drylap.load;

import java.util.concurrent.atomic.LongAdder;

/** What the server told open pages without being asked. */
final class Pushes {
    private final LongAdder messages = new LongAdder();
    private final LongAdder letters = new LongAdder();

    void one(String message) {
        messages.increment();
        letters.add(message.length());
    }

    String words() {
        return "%,d messages of %,d KB in all".formatted(messages.sum(), letters.sum() >> 10);
    }
}
