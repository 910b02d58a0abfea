package drylap.demo;

import java.util.List;

/** What came of loading the sample or taking it away. */
public sealed interface SampleResult {
    record Done() implements SampleResult {}

    /**
     * Nothing was changed.
     *
     * @param why each a sentence
     */
    record Refused(List<String> why) implements SampleResult {
        public Refused {
            why = List.copyOf(why);
        }
    }
}
