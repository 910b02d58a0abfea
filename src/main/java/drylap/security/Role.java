package drylap.security;

import drylap.kernel.Coded;

/** What someone does on the sites; a person has one role. */
public enum Role implements Coded {
    SCHEDULER("scheduler", "scheduler"),
    WINDOW_CREW("window-crew", "window crew"),
    FOLLOW_ON("follow-on", "follow-on trade"),
    TESTER("tester", "tester"),
    ADMINISTRATOR("administrator", "administrator"),
    /** Who runs a firm so small that one person plans and manages people. */
    CONTRACTOR("contractor", "contractor");

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

    /** Answers for who may sign in; one such person must be left. */
    public boolean managesPeople() {
        return this == ADMINISTRATOR || this == CONTRACTOR;
    }

    /** Works in a crew of the job folder, so that its day sheet is that crew's. */
    public boolean inCrew() {
        return this == WINDOW_CREW || this == FOLLOW_ON || this == TESTER;
    }
}
