package drylap.planning.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Takes a run of units out of one route and puts it, in order, into a route: another, or the same elsewhere. May let them wait
 * for other moments than before: a unit that waits for Thursday gains nothing from Tuesday's place.
 */
final class MoveRun extends ListMove {
    private final Route from;
    private final int at;
    private final int length;
    private final Route to;
    /** The place in {@code to} after the run has been taken out. */
    private final int into;
    /** Until when each then waits; null: as before. */
    private final int @Nullable [] waits;

    MoveRun(Route from, int at, int length, Route to, int into) {
        this(from, at, length, to, into, null);
    }

    private MoveRun(Route from, int at, int length, Route to, int into, int @Nullable [] waits) {
        this.from = from;
        this.at = at;
        this.length = length;
        this.to = to;
        this.into = into;
        this.waits = waits;
    }

    /** The same, but all of the run waits until a minute. */
    MoveRun waitingUntil(int minute) {
        int[] all = new int[length];
        Arrays.fill(all, minute);
        return new MoveRun(from, at, length, to, into, all);
    }

    @Override
    MoveRun opposite(CrewLists lists) {
        return new MoveRun(to, into, length, from, at, waits == null ? null : waitsNow(lists));
    }

    private int[] waitsNow(CrewLists lists) {
        int[] now = new int[length];
        for (int i = 0; i < length; i++)
            now[i] = lists.notBefore[from.getUnits().get(at + i).index];
        return now;
    }

    @Override
    void change(Announcer announcer, CrewLists lists) {
        if (from == to) {
            changeWithin(announcer, lists);
            return;
        }
        announcer.before(from, at, at + length);
        announcer.before(to, into, into);
        moveUnits(lists);
        announcer.after(from, at, at);
        announcer.after(to, into, into + length);
    }

    /** Within a list all between the old place and the new one shifts. */
    private void changeWithin(Announcer announcer, CrewLists lists) {
        int first = Math.min(at, into);
        int end = Math.max(at, into) + length;
        announcer.before(from, first, end);
        moveUnits(lists);
        announcer.after(from, first, end);
    }

    private void moveUnits(CrewLists lists) {
        List<Unit> run = from.getUnits().subList(at, at + length);
        List<Unit> moved = new ArrayList<>(run);
        run.clear();
        to.getUnits().addAll(into, moved);
        if (waits != null) for (int i = 0; i < length; i++) lists.notBefore[moved.get(i).index] = waits[i];
    }

    @Override
    boolean idle(CrewLists lists) {
        return from == to && at == into && (waits == null || Arrays.equals(waits, waitsNow(lists)));
    }

    @Override
    boolean closesRing(Rings rings) {
        return rings.closes(from, at, length, to, into);
    }

    @Override
    public String toString() {
        return "move %d from %s[%d] to %s[%d]".formatted(length, from, at, to, into);
    }
}
