package drylap.security;

/** Everything that a person can ask of Drylap. Who may do it stands in {@link Rights}; nobody may do what is not listed there. */
public enum Operation {
    SEE_START,
    CHANGE_SAMPLE,
    SEE_WEEK_SHEET,
    SEE_WALLS,
    SEE_OPEN_HOURS,
    SEE_FOLDERS,
    IMPORT_FOLDER,
    PROPOSE_PLAN,
    MOVE_VISIT,
    PIN_VISIT,
    PUBLISH_PLAN,
    SEE_ODDS,
    RECKON_ODDS,
    SEE_CREWS,
    CHANGE_ABSENCES,
    SEE_CALENDAR_LINKS,
    CHANGE_CALENDAR_LINKS,
    SEE_RULES,
    CHANGE_RULES,
    CHANGE_LABOUR,
    CHOOSE_FORECAST,
    SEE_SEASON,
    CHANGE_CLIMATE,
    SEE_OPENINGS,
    SEE_CREW_DAY,
    MARK_INSTALL,
    MARK_FOLLOW_ON,
    UNDO_MARK,
    SEE_PHOTO,
    ADD_PHOTO,
    CALL_RAIN,
    MEASURE_OPENING,
    SEE_APRONS,
    PASS_HOLD_POINT,
    RELEASE,
    ACCEPT,
    RETURN,
    RECORD_WATER_TEST,
    BOOK_CREW_DAY,
    SEE_HANDOFF_RECORD,
    SEE_HISTORY,
    SEE_PEOPLE,
    CHANGE_PEOPLE,
    SEE_MACHINE;

    /** In words, as a refusal names it. */
    public String words() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
