package drylap.ui.planner;

import drylap.speech.Saying;

/** What was put into a field is not accepted: which field, what is wrong, what would be accepted. */
final class WrongField extends Exception {
    private final transient Saying said;

    /** @param field its label, in the reader's language */
    WrongField(String field, Saying wrong, Saying accepted) {
        said = Saying.of("{0}: {1}; {2}.", field, wrong, accepted);
    }

    /** On screens that are English as a whole. */
    WrongField(String field, String wrong, String accepted) {
        this(field, Saying.asItIs(wrong), Saying.asItIs(accepted));
    }

    Saying said() {
        return said;
    }

    String words() {
        return said.words();
    }
}
