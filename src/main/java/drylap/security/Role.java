package drylap.security;

import drylap.kernel.Coded;

/** What someone does on the sites; a person has one role. */
public enum Role implements Coded {
    SCHEDULER("scheduler", "scheduler"),
    WINDOW_CREW("window-crew", "window crew"),
    FOLLOW_ON("follow-on", "follow-on trade"),
    TESTER("tester", "tester"),
    ADMINISTRATOR("administrator", "administrator");

    private final String code;
    private final String words;

    Role(String code, String words) {
        this.code = code;
        this.words = words;
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }

    /** Works in a crew of the job folder, so that its day sheet is that crew's. */
    public boolean inCrew() {
        return this == WINDOW_CREW || this == FOLLOW_ON || this == TESTER;
    }
}
