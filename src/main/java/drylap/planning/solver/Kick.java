package drylap.planning.solver;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;

/** Throws a few units of a plan elsewhere, so that a search that is stuck begins again nearby. */
final class Kick {
    private static final int LEAST = 2;

    private Kick() {}

    static CrewLists of(CrewLists lists, Random random) {
        CrewLists kicked = new CrewLists.Cloner().cloneSolution(lists);
        int units = lists.getUnits().size();
        int most = units <= RegionSearch.SMALL ? units / 6 : units / 200;
        int more = random.nextInt(1 + most);
        int count = Math.min(units, LEAST + more);
        for (int i = 0; i < count; i++) move(kicked, random);
        return kicked;
    }

    private static void move(CrewLists lists, Random random) {
        List<Route> filled = lists.getRoutes().stream()
                .filter(route -> !route.getUnits().isEmpty())
                .toList();
        List<Unit> from = filled.get(random.nextInt(filled.size())).getUnits();
        Unit unit = from.remove(random.nextInt(from.size()));
        List<Integer> able = new ArrayList<>();
        BitSet crews = unit.crews();
        for (int crew = crews.nextSetBit(0); crew >= 0; crew = crews.nextSetBit(crew + 1)) able.add(crew);
        List<Unit> to =
                lists.getRoutes().get(able.get(random.nextInt(able.size()))).getUnits();
        to.add(random.nextInt(to.size() + 1), unit);
        if (random.nextBoolean()) lists.notBefore[unit.index] = 0;
    }
}
