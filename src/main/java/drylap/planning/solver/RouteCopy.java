package drylap.planning.solver;

import java.util.List;

/** A route as it was at some moment: its units in order, and until when each waited. */
record RouteCopy(Route route, Unit[] units, int[] waits) {
    static RouteCopy of(Route route, int[] notBefore) {
        Unit[] units = route.getUnits().toArray(Unit[]::new);
        int[] waits = new int[units.length];
        for (int i = 0; i < units.length; i++) waits[i] = notBefore[units[i].index];
        return new RouteCopy(route, units, waits);
    }

    boolean matches(int[] notBefore) {
        List<Unit> now = route.getUnits();
        if (now.size() != units.length) return false;
        for (int i = 0; i < units.length; i++)
            if (now.get(i) != units[i] || notBefore[units[i].index] != waits[i]) return false;
        return true;
    }
}
