package drylap.planning.solver;

import java.util.List;

/** Where each unit is: its route and its place in that. */
final class Positions {
    private final Route[] routes;
    private final int[] places;

    Positions(List<Route> routes, int units) {
        this.routes = new Route[units];
        places = new int[units];
        for (Route route : routes) refresh(route, 0, route.getUnits().size());
    }

    void refresh(Route route, int from, int until) {
        List<Unit> units = route.getUnits();
        for (int place = from; place < until; place++) {
            int unit = units.get(place).index;
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
