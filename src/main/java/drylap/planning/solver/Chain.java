package drylap.planning.solver;

import java.util.List;

/** Several moves, one after the other; how to take each back is known from when they were found. */
final class Chain extends ListMove {
    private final List<ListMove> forth;
    private final List<ListMove> back;

    /** @param back for each move the one that takes it back, last move first */
    Chain(List<ListMove> forth, List<ListMove> back) {
        this.forth = forth;
        this.back = back;
    }

    @Override
    void change(Announcer announcer, CrewLists lists) {
        for (ListMove move : forth) move.change(announcer, lists);
    }

    @Override
    Chain opposite(CrewLists lists) {
        return new Chain(back, forth);
    }

    @Override
    boolean idle(CrewLists lists) {
        return forth.isEmpty();
    }

    @Override
    public String toString() {
        return "rebuild by " + forth;
    }
}
