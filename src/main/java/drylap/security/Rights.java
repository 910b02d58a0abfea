package drylap.security;

import static drylap.security.Operation.*;

import java.util.EnumSet;
import java.util.Set;

/** Which role may do what; all else is denied. Where it may do it is the person's reach. */
public final class Rights {
    private Rights() {}

    public static Set<Operation> of(Role role) {
        return switch (role) {
            case SCHEDULER -> scheduler();
            case WINDOW_CREW ->
                EnumSet.of(
                        SEE_OPENINGS,
                        SEE_CREW_DAY,
                        SEE_CALENDAR_LINKS,
                        MARK_INSTALL,
                        UNDO_MARK,
                        SEE_PHOTO,
                        ADD_PHOTO,
                        CALL_RAIN,
                        MEASURE_OPENING,
                        PASS_HOLD_POINT,
                        RELEASE,
                        SEE_HANDOFF_RECORD);
            case FOLLOW_ON ->
                EnumSet.of(
                        SEE_OPENINGS,
                        SEE_APRONS,
                        SEE_CALENDAR_LINKS,
                        MARK_FOLLOW_ON,
                        UNDO_MARK,
                        SEE_PHOTO,
                        ADD_PHOTO,
                        ACCEPT,
                        RETURN,
                        BOOK_CREW_DAY,
                        SEE_HANDOFF_RECORD);
            case TESTER ->
                EnumSet.of(
                        SEE_OPENINGS,
                        SEE_CREW_DAY,
                        SEE_CALENDAR_LINKS,
                        SEE_PHOTO,
                        ADD_PHOTO,
                        RECORD_WATER_TEST,
                        UNDO_MARK,
                        SEE_HANDOFF_RECORD);
            case ADMINISTRATOR ->
                EnumSet.of(SEE_START, CHANGE_SAMPLE, SEE_PEOPLE, CHANGE_PEOPLE, SEE_HISTORY, SEE_MACHINE);
            case CONTRACTOR -> contractor();
        };
    }

    /** A scheduler with the keys to the house. */
    private static Set<Operation> contractor() {
        Set<Operation> both = EnumSet.copyOf(scheduler());
        both.addAll(of(Role.ADMINISTRATOR));
        return both;
    }

    /** All but what another trade answers for itself, and the keys to the house. */
    private static Set<Operation> scheduler() {
        return EnumSet.complementOf(
                EnumSet.of(MARK_FOLLOW_ON, ACCEPT, RETURN, BOOK_CREW_DAY, SEE_PEOPLE, CHANGE_PEOPLE, SEE_MACHINE));
    }
}
