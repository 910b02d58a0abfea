package drylap.planning.solver;

/**
 * How often which moves are drawn. Where there are few draws for each unit, single ones go next to related work, and mostly those
 * that cost most by themselves; else there are draws to spare for whole days that are rebuilt. Where there are many units one often changes
 * places with what stands beside its relatives.
 *
 * @param rebuilds of a thousand draws
 * @param drier of a thousand, to drier hours, where rain costs anything
 * @param costly of a hundred others, for one of the units that cost most
 * @param near of a hundred others, next to related work; the ones after it up to these
 * @param beside of a hundred changes of places, with what stands beside a relative; 0: half of them with relatives
 */
record Mix(
        int rebuilds,
        int drier,
        int costly,
        int near,
        int inTime,
        int anywhere,
        int swap,
        int run,
        int tails,
        int beside) {
    private static final Mix OF_SOME = new Mix(2, 280, 50, 44, 48, 50, 72, 82, 88, 0);
    private static final Mix OF_MANY = new Mix(2, 280, 50, 44, 48, 50, 72, 82, 88, 60);
    private static final Mix HASTY = new Mix(0, 220, 70, 60, 63, 64, 78, 88, 92, 0);

    static Mix of(CrewLists lists) {
        if (lists.hasty) return HASTY;
        return Cooling.isMany(lists.getUnits()) ? OF_MANY : OF_SOME;
    }
}
