package drylap.planning.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Takes related units out one by one and puts each where it costs least among places that are tried on the working schedule:
 * first moved at any price, then as it pays. Leaves everything as it found it and answers with the moves.
 */
final class Rebuild {
    private static final int PLACES = 12;

    private final CrewLists lists;
    private final Schedule schedule;
    private final List<ListMove> forth = new ArrayList<>();
    private final List<ListMove> back = new ArrayList<>();
    private final ListMove.Announcer noting = new ListMove.Announcer() {
        @Override
        public void before(Route route, int from, int until) {}

        @Override
        public void after(Route route, int from, int until) {
            if (lists.takingBack) schedule.positions.refresh(route, from);
            else schedule.listChanged(route, from, until);
        }
    };

    private Rebuild(CrewLists lists) {
        this.lists = lists;
        schedule = lists.working;
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
        for (ListMove undo : rebuild.back) undo.change(rebuild.noting, lists);
        if (rebuild.schedule.listsChanged()) rebuild.schedule.settle();
        return new Chain(rebuild.forth, rebuild.back);
    }

    private void replace(Unit unit, boolean forced, Function<Unit, ListMove> place) {
        ListMove best = null;
        long medium = forced ? Long.MAX_VALUE : schedule.tally.medium();
        long soft = forced ? Long.MAX_VALUE : schedule.tally.soft();
        for (int i = 0; i < PLACES; i++) {
            ListMove move = tried(place.apply(unit));
            if (move == null || triedMedium > medium || triedMedium == medium && triedSoft >= soft) continue;
            best = move;
            medium = triedMedium;
            soft = triedSoft;
        }
        if (best == null) return;
        back.addFirst(best.opposite(lists));
        forth.add(best);
        best.change(noting, lists);
        schedule.settle();
    }

    private long triedMedium;
    private long triedSoft;

    private @Nullable ListMove tried(ListMove move) {
        if (move.idle(lists) || move.closesRing(schedule.rings)) return null;
        ListMove undo = move.opposite(lists);
        move.change(noting, lists);
        schedule.settle();
        lists.meter.count();
        triedMedium = schedule.tally.medium();
        triedSoft = schedule.tally.soft();
        lists.takingBack = true;
        undo.change(noting, lists);
        lists.takingBack = false;
        schedule.rollBack();
        return move;
    }
}
