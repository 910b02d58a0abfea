package drylap.planning.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/**
 * Takes related units out one by one and puts each where it costs least among places that are tried on the working schedule:
 * first moved at any price, then as it pays. Leaves everything as it found it and answers with the moves.
 */
final class Rebuild {
    private static final int PLACES = 12;
    private static final ToLongFunction<Unit> NO_AIM = unit -> 0;

    private final CrewLists lists;
    private final Schedule schedule;
    private final Trial trial;
    private final ToLongFunction<Unit> lateness;
    private final List<ListMove> forth = new ArrayList<>();
    private final List<ListMove> back = new ArrayList<>();

    private Rebuild(CrewLists lists, ToLongFunction<Unit> lateness) {
        this.lists = lists;
        this.lateness = lateness;
        schedule = lists.working;
        trial = new Trial(lists);
    }

    /**
     * The moves by which units are rebuilt.
     *
     * @param forced how many of them, from the first, have to leave their place
     * @param place draws a move that takes a unit elsewhere
     */
    static Chain of(CrewLists lists, List<Unit> units, int forced, Function<Unit, ListMove> place) {
        return of(lists, units, forced, place, NO_AIM);
    }

    /** @param lateness by how much a unit misses its aim as the schedule stands; weighs more than costs, less than what is out */
    static Chain of(
            CrewLists lists,
            List<Unit> units,
            int forced,
            Function<Unit, ListMove> place,
            ToLongFunction<Unit> lateness) {
        Rebuild rebuild = new Rebuild(lists, lateness);
        for (int i = 0; i < units.size(); i++) rebuild.replace(units.get(i), i < forced, place);
        rebuild.trial.makeAll(rebuild.back);
        return new Chain(rebuild.forth, rebuild.back);
    }

    private record Cost(long medium, long lateness, long soft) implements Comparable<Cost> {
        static final Cost ANY = new Cost(Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE);

        @Override
        public int compareTo(Cost other) {
            int byMedium = Long.compare(medium, other.medium);
            int byLateness = byMedium != 0 ? byMedium : Long.compare(lateness, other.lateness);
            return byLateness != 0 ? byLateness : Long.compare(soft, other.soft);
        }
    }

    private void replace(Unit unit, boolean forced, Function<Unit, ListMove> place) {
        ListMove best = null;
        Cost least = forced
                ? Cost.ANY
                : new Cost(schedule.tally.medium(), lateness.applyAsLong(unit), schedule.tally.soft());
        for (int i = 0; i < PLACES; i++) {
            ListMove move = place.apply(unit);
            if (!tried(move, unit, least)) continue;
            Cost cost = new Cost(trial.medium, trial.aim, trial.soft);
            if (cost.compareTo(least) >= 0) continue;
            best = move;
            least = cost;
        }
        if (best == null) return;
        back.addFirst(best.opposite(lists));
        forth.add(best);
        trial.make(best);
    }

    /** Where nothing is out or late, what has become dearer on the way than the best place so far need not be looked at to its end. */
    private boolean tried(ListMove move, Unit unit, Cost least) {
        return lateness == NO_AIM && least.medium == 0
                ? trial.ofUnlessDearer(move, least.soft)
                : trial.of(move, () -> lateness.applyAsLong(unit));
    }
}
