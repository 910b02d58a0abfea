package drylap.planning.solver;

import java.util.List;

/** Where each unit is: its route and its place in that. */
final class Positions {
    private final Route[] routes;
    private final int[] places;

    Positions(int units) {
        routes = new Route[units];
        places = new int[units];
    }

    /** Notes a route's units from a place on: those that are others than before up to a place, and those after it where they have moved along. */
    void refresh(Route route, int from, int until) {
        List<Unit> units = route.getUnits();
        for (int place = from; place < units.size(); place++) {
            int unit = units.get(place).index;
            if (place >= until && places[unit] == place && routes[unit] == route) return; // nor has anything after it
            routes[unit] = route;
            places[unit] = place;
        }
    }

    Route route(Unit unit) {
        return routes[unit.index];
    }

    int place(Unit unit) {
        return places[unit.index];
    }
}
