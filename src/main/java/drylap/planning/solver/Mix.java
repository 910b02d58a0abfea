package drylap.planning.solver;

/**
 * How often which moves are drawn. Many units have few draws each: single ones go next to related work, and mostly those that cost
 * most by themselves. A few have draws to spare for whole days that are rebuilt.
 *
 * @param rebuilds of a thousand draws
 * @param drier of a thousand, to drier hours, where rain costs anything
 * @param costly of a hundred others, for one of the units that cost most
 * @param near of a hundred others, next to related work; the ones after it up to these
 */
record Mix(int rebuilds, int drier, int costly, int near, int inTime, int anywhere, int swap, int run, int tails) {
    private static final Mix OF_FEW = new Mix(2, 280, 50, 44, 48, 50, 72, 82, 88);
    private static final Mix OF_MANY = new Mix(0, 220, 70, 60, 63, 64, 78, 88, 92);
    private static final int MANY = 300;

    static Mix of(int units) {
        return units < MANY ? OF_FEW : OF_MANY;
    }
}
