package drylap.planning;

import drylap.kernel.Trade;
import drylap.speech.KeptWords;
import drylap.speech.Saying;
import java.util.Arrays;
import java.util.stream.Stream;

/** The sentences with which a plan says why a task is left out of it. A plan keeps them in English; they are read back to be said to others. */
public enum LeftOut {
    NO_METHOD("no window crew is trained for method {0}"),
    NO_TRADE("there is no crew of the trade {0}"),
    CREWS_TAKEN("every crew that could do it is taken until {0}"),
    MUST_END("must end by {0}"),
    COMES_LATE("delivered on {0}, and no crew has open time after that before {1}"),
    NO_HOUR("needs {0} min in a row between {1} and {2}"),
    WAITS_FOR_INSTALL("waits for the install of {0}, which is not planned"),
    WAITS_FOR_TEST("waits for the test of {0}, which is not planned"),
    WAITS_FOR_WRAP("waits for the wrap of {0}, which is not planned"),
    WAITS_FOR_CLAD("waits for the clad of {0}, which is not planned"),
    RING("crews wait for each other in a ring");

    private static final KeptWords KEPT = new KeptWords(Stream.concat(
            Arrays.stream(values()).map(one -> one.sentence),
            Arrays.stream(Trade.values()).map(Trade::code)));

    private final String sentence;

    LeftOut(String sentence) {
        this.sentence = sentence;
    }

    /** As a plan keeps it. */
    public String with(Object... parts) {
        return Saying.of(sentence, parts).words();
    }

    /** What was written, to be said in other languages; other words, as of a plan made elsewhere, stay as they are. */
    public static Saying read(String detail) {
        return KEPT.read(detail);
    }
}
