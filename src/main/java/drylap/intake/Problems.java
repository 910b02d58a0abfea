package drylap.intake;

import java.util.ArrayList;
import java.util.List;

/** All that is wrong with one folder; only the first of very many are kept, the rest are counted. */
public final class Problems {
    public static final int KEPT = 200;

    private final List<Problem> kept = new ArrayList<>();
    private int found;

    public void add(Problem problem) {
        if (found++ < KEPT) kept.add(problem);
    }

    public boolean isEmpty() {
        return found == 0;
    }

    public List<Problem> kept() {
        return List.copyOf(kept);
    }

    /** How many were found beyond those that are kept. */
    public int more() {
        return found - kept.size();
    }
}
