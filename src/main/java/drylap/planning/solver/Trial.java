package drylap.planning.solver;

import java.util.function.LongSupplier;

/** Tries moves on the working schedule, without the solver knowing. */
final class Trial {
    private final CrewLists lists;
    private final Schedule schedule;
    /** What the plan would cost with the last move that was tried. */
    long medium;

    long soft;
    long aim;

    private final ListMove.Announcer announcer = new ListMove.Announcer() {
        @Override
        public void before(Route route, int from, int until) {}

        @Override
        public void after(Route route, int from, int until) {
            lists.listChanged(route, from, until);
        }
    };

    Trial(CrewLists lists) {
        this.lists = lists;
        schedule = lists.working;
    }

    /** Makes a move, looks what the plan costs, and takes it back; false for one that changes nothing or is not allowed. */
    boolean of(ListMove move) {
        return of(move, () -> 0);
    }

    /** @param look is asked while the move is made; what it says is in {@link #aim} */
    boolean of(ListMove move, LongSupplier look) {
        if (move.idle(lists) || move.closesRing(schedule.rings)) return false;
        ListMove undo = move.opposite(lists);
        make(move);
        lists.meter.count();
        medium = schedule.tally.medium();
        soft = schedule.tally.soft();
        aim = look.getAsLong();
        lists.takingBack = true;
        undo.change(announcer, lists);
        lists.takingBack = false;
        schedule.rollBack();
        return true;
    }

    /** Makes a move that stays. */
    void make(ListMove move) {
        move.change(announcer, lists);
        schedule.settle();
    }

    /** Makes several, and brings the schedule up to date once. */
    void makeAll(Iterable<ListMove> moves) {
        for (ListMove move : moves) move.change(announcer, lists);
        if (schedule.listsChanged()) schedule.settle();
    }
}
