package drylap.planning.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Takes related units out one by one and puts each where it costs least among places that are tried on the working schedule:
 * first moved at any price, then as it pays. Leaves everything as it found it and answers with the moves.
 */
final class Rebuild {
    private static final int PLACES = 12;

    private final CrewLists lists;
    private final Schedule schedule;
    private final Trial trial;
    private final List<ListMove> forth = new ArrayList<>();
    private final List<ListMove> back = new ArrayList<>();

    private Rebuild(CrewLists lists) {
        this.lists = lists;
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
        Rebuild rebuild = new Rebuild(lists);
        for (int i = 0; i < units.size(); i++) rebuild.replace(units.get(i), i < forced, place);
        rebuild.trial.makeAll(rebuild.back);
        return new Chain(rebuild.forth, rebuild.back);
    }

    private void replace(Unit unit, boolean forced, Function<Unit, ListMove> place) {
        ListMove best = null;
        long medium = forced ? Long.MAX_VALUE : schedule.tally.medium();
        long soft = forced ? Long.MAX_VALUE : schedule.tally.soft();
        for (int i = 0; i < PLACES; i++) {
            ListMove move = place.apply(unit);
            if (!trial.of(move) || trial.medium > medium || trial.medium == medium && trial.soft >= soft) continue;
            best = move;
            medium = trial.medium;
            soft = trial.soft;
        }
        if (best == null) return;
        back.addFirst(best.opposite(lists));
        forth.add(best);
        trial.make(best);
    }
}
