package drylap.planning;

/** What can hold a visit back. */
public enum BoundKind {
    PLAN_START,
    SHIFT_START,
    STOP_BEFORE,
    PINNED_BEFORE,
    PINNED_BEHIND,
    DELIVERY,
    CURE,
    COURSE_INSTALLS,
    COURSE_TESTS,
    COURSE_WRAPS,
    LEVEL_BELOW,
    WALL_SHUT,
    BREAK,
    DAY_BEFORE_FULL,
    CHOICE
}
