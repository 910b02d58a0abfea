package drylap.hooks;

import drylap.speech.KeptWords;
import drylap.speech.Saying;
import java.util.Arrays;

/** The sentences that say what came of telling a program, or why it cannot be told. Kept in English, and read back to be said to others. */
public enum TryWords {
    ANSWERED("answered {0}"),
    UNKNOWN("{0} is not known"),
    SLOW("{0} did not answer in time"),
    CLOSED("{0} cannot be reached"),
    NO_CERTIFICATE("{0} shows no certificate that is trusted here"),
    BROKE_OFF("the connection with {0} broke off"),
    INSIDE("{0} leads to {1}, which is not in the public network"),
    ENDED("the hook was ended before it could be told"),
    NOT_ALLOWED("the owner of the hook may not see this site any more"),
    NO_ADDRESS("''{0}'' is no address; accepted: {1}"),
    WRONG_BEGINNING("''{0}'' does not begin as it should; accepted: {1}"),
    MORE_THAN_AN_ADDRESS("''{0}'' has a name, a password or a part behind #; accepted: {1} without them"),
    TOO_LONG("it has {0} characters; accepted: up to {1}"),
    EITHER("{0} or {1}");

    private static final KeptWords KEPT = new KeptWords(Arrays.stream(values()).map(one -> one.sentence));

    private final String sentence;

    TryWords(String sentence) {
        this.sentence = sentence;
    }

    Saying with(Object... parts) {
        return Saying.of(sentence, parts);
    }

    /** What was kept, to be said in other languages; other words stay as they are. */
    public static Saying read(String kept) {
        return KEPT.read(kept);
    }
}
