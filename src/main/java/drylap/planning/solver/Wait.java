package drylap.planning.solver;

/** Lets a unit wait until a moment, or wait no more. Announced as a change of its place in its route. */
final class Wait extends ListMove {
    private final Route route;
    private final int at;
    private final int until;

    Wait(Route route, int at, int until) {
        this.route = route;
        this.at = at;
        this.until = until;
    }

    private int unit() {
        return route.getUnits().get(at).index;
    }

    @Override
    Wait opposite(CrewLists lists) {
        return new Wait(route, at, lists.notBefore[unit()]);
    }

    @Override
    void change(Announcer announcer, CrewLists lists) {
        announcer.before(route, at, at + 1);
        lists.notBefore[unit()] = until;
        announcer.after(route, at, at + 1);
    }

    @Override
    boolean idle(CrewLists lists) {
        return lists.notBefore[unit()] == until;
    }

    @Override
    public String toString() {
        return "let %s[%d] wait until minute %d".formatted(route, at, until);
    }
}
