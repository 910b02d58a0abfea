package drylap.whatif;

import drylap.speech.Saying;
import drylap.speech.Unfit;
import java.util.Arrays;
import java.util.stream.Stream;

/** Why a change cannot be made. */
public enum CannotBe {
    CREW_THERE("there is a crew {0} already"),
    NO_CREW("there is no crew {0}"),
    NO_OPENING("there is no opening {0}"),
    NO_OPENING_ON("there is no opening on {0}"),
    NO_SHIFT("no crew of {0} has a shift on {1}"),
    NOT_FORECAST("nothing is forecast at site {0} from {1} until {2}"),
    NOBODY_LEFT("scenario {0} leaves no crew a day; at least one is needed");

    private final String sentence;

    CannotBe(String sentence) {
        this.sentence = sentence;
    }

    Unfit with(Object... parts) {
        return new Unfit(Saying.of(sentence, parts));
    }

    /** For whoever reads back what was written down in English. */
    public static Stream<String> sentences() {
        return Arrays.stream(values()).map(one -> one.sentence);
    }
}
