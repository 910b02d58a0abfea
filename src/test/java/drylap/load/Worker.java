package drylap.load;

import java.io.IOException;
import java.time.Duration;
import java.util.Random;

/** Somebody who comes in, and then does one thing after another. */
interface Worker {
    void comeIn() throws IOException, InterruptedException;

    /** Between two pauses. */
    void act(Random draw) throws IOException, InterruptedException;

    /** Before each thing to do. */
    default Duration pause(Random draw) {
        return Think.of(draw);
    }

    void leave() throws IOException, InterruptedException;
}
