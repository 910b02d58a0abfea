package drylap.planning.solver;

import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/** Tries moves on the working schedule, without the solver knowing. */
final class Trial {
    private final CrewLists lists;
    private final Schedule schedule;
    /** What the plan would cost with the last move that was tried. */
    long medium;

    long soft;
    long aim;

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
        return made(move, () -> {
            schedule.settle();
            aim = look.getAsLong();
            return true;
        });
    }

    /** Makes a move and takes it back; false, too, where it leaves something out or has become dearer than that on the way. */
    boolean ofUnlessDearer(ListMove move, long than) {
        return made(move, () -> schedule.settleUnlessDearer(than));
    }

    private boolean made(ListMove move, BooleanSupplier settle) {
        if (move.idle(lists) || move.closesRing(schedule.rings)) return false;
        ListMove undo = move.opposite(lists);
        move.change(lists.toSchedule, lists);
        boolean settled = settle.getAsBoolean();
        lists.meter.count();
        medium = schedule.tally.medium();
        soft = schedule.tally.soft();
        lists.takeBack(undo);
        return settled;
    }

    /** Makes a move that stays. */
    void make(ListMove move) {
        move.change(lists.toSchedule, lists);
        schedule.settle();
    }

    /** Makes several, and brings the schedule up to date once. */
    void makeAll(Iterable<ListMove> moves) {
        for (ListMove move : moves) move.change(lists.toSchedule, lists);
        if (schedule.listsChanged()) schedule.settle();
    }
}
