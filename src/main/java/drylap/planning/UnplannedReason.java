package drylap.planning;

import drylap.kernel.Coded;

/** What keeps a task out of the plan. */
public enum UnplannedReason implements Coded {
    NO_CREW_TRAINED("no crew trained"),
    NO_DELIVERY("no delivery"),
    NO_DRY_WINDOW("no dry window long enough"),
    HORIZON_FULL("horizon full"),
    WAITS_FOR_TASK("waits for another task"),
    APRON_LIMIT("apron limit");

    private final String code;

    UnplannedReason(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
