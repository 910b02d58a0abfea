package drylap.demo;

import drylap.speech.Saying;
import java.util.List;

/** What came of loading the sample or taking it away. */
public sealed interface SampleResult {
    record Done() implements SampleResult {}

    /**
     * Nothing was changed.
     *
     * @param why each a sentence
     */
    record Refused(List<Saying> why) implements SampleResult {
        public Refused {
            why = List.copyOf(why);
        }
    }
}
