package drylap.planning.solver;

import org.jspecify.annotations.Nullable;

/** What a unit was told when it was last placed, and what came of it: told the same again, it need not be placed again. */
final class UnitMemo {
    boolean valid;
    int crew = -1;
    int notBefore;
    int inDay;
    int inClock;

    @Nullable
    WorkTask inBefore;

    final int[] earliest;
    final int[] latestEnd;
    int outDay;
    int outClock;

    @Nullable
    WorkTask outBefore;

    UnitMemo(int tasks) {
        earliest = new int[tasks];
        latestEnd = new int[tasks];
    }
}
