package drylap.ui.planner;

/** What was put into a field is not accepted: which field, what is wrong, what would be accepted. */
final class WrongField extends Exception {
    WrongField(String field, String wrong, String accepted) {
        super("%s: %s; %s.".formatted(field, wrong, accepted));
    }

    String words() {
        return String.valueOf(getMessage());
    }
}
