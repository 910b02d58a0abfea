package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.List;
import java.util.Random;

/** Draws units, crews, places and moments that go together. */
final class Lots {
    private static final int MINUTES_AROUND = 1440;
    private static final int DAYS_EARLIER = 3;
    private static final int COMPARED = 3;

    final CrewLists lists;
    final Random random;
    private final Problem problem;
    private final List<Unit> units;

    Lots(CrewLists lists, Random random) {
        this.lists = lists;
        this.random = random;
        problem = lists.problem();
        units = lists.getUnits();
    }

    /** Any unit, or, where people have the plan already, one of those near what has changed. */
    Unit unit() {
        List<Unit> from = lists.focus.isEmpty() ? units : lists.focus.units();
        return from.get(random.nextInt(from.size()));
    }

    /** The one of a few units that costs most by itself: a better place saves most there. */
    Unit costly() {
        Unit costly = unit();
        long most = lists.working.tally.costOf(costly);
        for (int i = 1; i < COMPARED; i++) {
            Unit other = unit();
            long cost = lists.working.tally.costOf(other);
            if (cost <= most) continue;
            costly = other;
            most = cost;
        }
        return costly;
    }

    /** A unit of the same kind on the same facade, often of the same course; mostly there is one. */
    Unit relative(Unit unit) {
        List<Unit> near = random.nextInt(5) < 2 ? problem.neighbours(unit) : problem.relatives(unit);
        return near.get(random.nextInt(near.size()));
    }

    /** What another crew does at about the same time. */
    Unit contemporary(Unit unit) {
        Route route = someRoute(unit);
        List<Unit> all = route.getUnits();
        if (all.isEmpty()) return unit;
        return all.get(Math.min(all.size() - 1, placeInTime(unit, route)));
    }

    /** A place in the route at which its crew comes to work at about the time of the unit now, or up to a day off. */
    int placeInTime(Unit unit, Route to) {
        int start = lists.working.start[unit.tasks[0].index];
        if (start == TimeAxis.NEVER) return random.nextInt(to.getUnits().size() + 1);
        int around = start + random.nextInt(2 * MINUTES_AROUND) - MINUTES_AROUND;
        return lists.working.placeAt(to, around);
    }

    /** A move to a place up to three days before the one it has. */
    ListMove earlier(Unit unit) {
        Route to = someRoute(unit);
        int start = lists.working.start[unit.tasks[0].index];
        int place = lists.working.placeAt(to, start - 1 - random.nextInt(DAYS_EARLIER * MINUTES_AROUND));
        return run(unit, 1, to, place).waitingUntil(0);
    }

    /** A move of a unit, and of those that follow it in its list, to before a place of a list as it is now. */
    MoveRun run(Unit unit, int length, Route to, int before) {
        Route from = lists.working.positions.route(unit);
        int at = lists.working.positions.place(unit);
        int into = from == to && before > at ? Math.max(at, before - length) : before;
        return new MoveRun(from, at, length, to, into);
    }

    /** What stands just before or after it in its list; itself where nothing does. */
    Unit beside(Unit unit) {
        List<Unit> units = lists.working.positions.route(unit).getUnits();
        int at = lists.working.positions.place(unit) + (random.nextBoolean() ? 1 : -1);
        return at < 0 || at >= units.size() ? unit : units.get(at);
    }

    Route someRoute(Unit unit) {
        return lists.getRoutes().get(unit.able[random.nextInt(unit.able.length)]);
    }

    /**
     * The driest moment of an install, of half the draws in all of the day, of the others in the rest of it from some minute on, since the
     * driest hours are soon taken.
     */
    DryMoment driest(Unit install, CrewCalendar crew, int day) {
        int begins = Math.max(0, crew.from[day]);
        int some = random.nextBoolean() ? 0 : random.nextInt(Math.max(1, crew.limit[day] - begins));
        return problem.dryHours().from(begins + some, install.tasks[0], crew, day);
    }

    /** The start, the middle or, for installs, the driest moment of the day on which a crew comes to a place of its list, or just after. */
    int momentAt(Route route, int place, Unit unit) {
        CrewCalendar crew = route.crew();
        if (crew.days() == 0) return 0;
        int now =
                place == 0 ? 0 : Math.max(0, lists.working.day[route.getUnits().get(place - 1).tasks[0].index]);
        int day = Math.min(crew.days() - 1, now + (random.nextInt(3) == 0 ? 1 : 0));
        if (unit.kind == Task.INSTALL) return driest(unit, crew, day).minute();
        return Math.max(0, random.nextBoolean() ? crew.from[day] : crew.breakUntil[day]);
    }

    /** The start of the day on which it is done now or of one soon after, or some hour or the driest of that day. */
    int laterMoment(CrewCalendar crew, Unit unit) {
        if (crew.days() == 0) return 0;
        int now = Math.max(0, lists.working.day[unit.tasks[0].index]);
        int day = Math.min(crew.days() - 1, now + random.nextInt(4));
        if (unit.kind == Task.INSTALL && random.nextBoolean())
            return driest(unit, crew, day).minute();
        int hours = random.nextInt(2) == 0 ? 0 : random.nextInt(10);
        return Math.max(0, crew.from[day] + hours * 60);
    }
}
