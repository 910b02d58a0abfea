package drylap.planning.solver;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.Move;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/** Draws moves that fit the problem: work goes to crews that may do it, next to related work or at about the time it has now. */
public class MoveMaker implements MoveIteratorFactory<CrewLists, Move<CrewLists>> {
    @Override
    public long getSize(ScoreDirector<CrewLists> director) {
        long units = director.getWorkingSolution().getUnits().size();
        return units * units;
    }

    @Override
    public Iterator<Move<CrewLists>> createOriginalMoveIterator(ScoreDirector<CrewLists> director) {
        throw new UnsupportedOperationException("moves are drawn at random, not enumerated");
    }

    @Override
    public Iterator<Move<CrewLists>> createRandomMoveIterator(ScoreDirector<CrewLists> director, Random random) {
        return new Draw(director.getWorkingSolution(), random);
    }

    private static final class Draw implements Iterator<Move<CrewLists>> {
        private static final int REBUILD_PERMILLE = 20;
        private static final int MOST_REBUILT = 8;
        private static final int FOCUSED = 100;
        private static final int NEAR = 28;
        private static final int IN_TIME = 44;
        private static final int ANYWHERE = 52;
        private static final int SWAP = 66;
        private static final int RUN = 76;
        private static final int TAILS = 80;
        private static final int LONGEST_RUN = 8;
        private static final int MINUTES_AROUND = 1440;
        private static final int TRIES = 8;

        private final CrewLists lists;
        private final Problem problem;
        private final List<Unit> units;
        private final Random random;

        Draw(CrewLists lists, Random random) {
            this.lists = lists;
            this.random = random;
            problem = lists.problem();
            units = lists.getUnits();
        }

        @Override
        public boolean hasNext() {
            return !units.isEmpty();
        }

        @Override
        public Move<CrewLists> next() {
            Schedule schedule = lists.working;
            if (schedule.listsChanged()) schedule.settle();
            if (random.nextInt(1000) < REBUILD_PERMILLE) return rebuild();
            ListMove move = draw();
            for (int tries = 1; tries < TRIES && (move.idle(lists) || move.closesRing(schedule.rings)); tries++)
                move = draw();
            return move;
        }

        /** Neighbours on a wall, or what a crew does in a day, so that the day may be saved. */
        private ListMove rebuild() {
            Unit seed = start();
            boolean wholeDay = random.nextBoolean();
            List<Unit> units = wholeDay ? dayOf(seed) : neighbours(seed);
            return Rebuild.of(lists, units, wholeDay ? units.size() : 1, this::elsewhere);
        }

        private List<Unit> dayOf(Unit seed) {
            Schedule schedule = lists.working;
            int day = schedule.day[seed.tasks[0].index];
            return schedule.positions.route(seed).getUnits().stream()
                    .filter(unit -> schedule.day[unit.tasks[0].index] == day)
                    .limit(MOST_REBUILT)
                    .toList();
        }

        private List<Unit> neighbours(Unit seed) {
            List<Unit> units = new ArrayList<>(List.of(seed));
            int more = 2 + random.nextInt(MOST_REBUILT - 2);
            for (int i = 0; i < more; i++) units.add(random.nextInt(3) == 0 ? contemporary(seed) : relative(seed));
            return units;
        }

        private ListMove elsewhere(Unit unit) {
            return random.nextInt(3) == 0 ? nextTo(unit, relative(unit)) : inTime(unit, 1, someRoute(unit));
        }

        private Unit start() {
            List<Unit> from = lists.focus.isEmpty() || random.nextInt(100) >= FOCUSED ? units : lists.focus;
            return from.get(random.nextInt(from.size()));
        }

        private ListMove draw() {
            Unit unit = start();
            int dice = random.nextInt(100);
            if (dice < NEAR) return nextTo(unit, relative(unit));
            if (dice < IN_TIME) return inTime(unit, 1, someRoute(unit));
            if (dice < ANYWHERE) return anywhere(unit);
            if (dice < SWAP) return swap(unit, random.nextInt(2) == 0 ? relative(unit) : contemporary(unit));
            if (dice < RUN) return run(unit);
            if (dice < TAILS) return tails(unit);
            return waiting(unit);
        }

        /** A unit of the same kind on the same facade; mostly there is one. */
        private Unit relative(Unit unit) {
            List<Unit> near = problem.relatives(unit);
            return near.get(random.nextInt(near.size()));
        }

        /** What another crew does at about the same time. */
        private Unit contemporary(Unit unit) {
            Route route = someRoute(unit);
            List<Unit> all = route.getUnits();
            if (all.isEmpty()) return unit;
            return all.get(Math.min(all.size() - 1, placeInTime(unit, route)));
        }

        private ListMove nextTo(Unit unit, Unit other) {
            Route to = lists.working.positions.route(other);
            if (other == unit || !unit.fits(to.crew())) return inTime(unit, 1, someRoute(unit));
            return move(unit, 1, to, lists.working.positions.place(other) + random.nextInt(2));
        }

        private ListMove anywhere(Unit unit) {
            Route to = someRoute(unit);
            return move(unit, 1, to, random.nextInt(to.getUnits().size() + 1));
        }

        private ListMove inTime(Unit unit, int length, Route to) {
            return move(unit, length, to, placeInTime(unit, to));
        }

        /** A place in the route at which its crew comes to work at about the time of the unit now, or up to a day off. */
        private int placeInTime(Unit unit, Route to) {
            int start = lists.working.start[unit.tasks[0].index];
            if (start == TimeAxis.NEVER) return random.nextInt(to.getUnits().size() + 1);
            int around = start + random.nextInt(2 * MINUTES_AROUND) - MINUTES_AROUND;
            return lists.working.placeAt(to, around);
        }

        private Route someRoute(Unit unit) {
            BitSet able = unit.crews();
            int crew = -1;
            for (int skip = random.nextInt(able.cardinality()); skip >= 0; skip--) crew = able.nextSetBit(crew + 1);
            return lists.getRoutes().get(crew);
        }

        private ListMove move(Unit unit, int length, Route to, int before) {
            Route from = lists.working.positions.route(unit);
            int at = lists.working.positions.place(unit);
            int into = from == to && before > at ? Math.max(at, before - length) : before;
            MoveRun move = new MoveRun(from, at, length, to, into);
            int dice = random.nextInt(4);
            return dice == 0 ? move : move.waitingUntil(dice == 1 ? 0 : momentAt(to, before));
        }

        /** The start or the middle of the day on which a crew comes to a place of its list, or of one just after. */
        private int momentAt(Route route, int place) {
            CrewCalendar crew = route.crew();
            if (crew.days() == 0) return 0;
            int now = place == 0
                    ? 0
                    : Math.max(0, lists.working.day[route.getUnits().get(place - 1).tasks[0].index]);
            int day = Math.min(crew.days() - 1, now + (random.nextInt(3) == 0 ? 1 : 0));
            return Math.max(0, random.nextBoolean() ? crew.from[day] : crew.breakUntil[day]);
        }

        private ListMove swap(Unit unit, Unit other) {
            Route left = lists.working.positions.route(unit);
            Route right = lists.working.positions.route(other);
            if (!unit.fits(right.crew()) || !other.fits(left.crew())) return inTime(unit, 1, someRoute(unit));
            return new SwapUnits(
                    left, lists.working.positions.place(unit), right, lists.working.positions.place(other));
        }

        private ListMove run(Unit unit) {
            Route from = lists.working.positions.route(unit);
            int at = lists.working.positions.place(unit);
            Route to = someRoute(unit);
            int length = 1;
            int most = Math.min(from.getUnits().size() - at, 2 + random.nextInt(LONGEST_RUN - 1));
            while (length < most && from.getUnits().get(at + length).fits(to.crew())) length++;
            return inTime(unit, length, to);
        }

        /** What two crews do from about the same time on changes hands. */
        private ListMove tails(Unit unit) {
            Route left = lists.working.positions.route(unit);
            Route right = someRoute(unit);
            int at = lists.working.positions.place(unit);
            return left == right ? run(unit) : new SwapTails(left, at, right, placeInTime(unit, right));
        }

        private ListMove waiting(Unit unit) {
            Route route = lists.working.positions.route(unit);
            int at = lists.working.positions.place(unit);
            int dice = random.nextInt(7);
            if (dice < 2 && lists.notBefore[unit.index] > 0) return new Wait(route, at, 0);
            if (dice < 4) return new Wait(route, at, laterMoment(route.crew(), unit));
            return new Wait(route, at, dice < 6 ? upToTheNext(route, at, unit) : endingWithTheCourse(unit));
        }

        /** So late that it ends with the last of its course, which keeps the course open for less long. */
        private int endingWithTheCourse(Unit unit) {
            Schedule schedule = lists.working;
            int end = schedule.ends.last(unit.course, unit.kind);
            int minutes = 0;
            for (WorkTask task : unit.tasks) minutes += task.minutes;
            return Math.max(0, end - minutes);
        }

        /** So late that the crew goes on to its next unit without a pause, which keeps a course open for less long. */
        private int upToTheNext(Route route, int at, Unit unit) {
            Schedule schedule = lists.working;
            WorkTask last = unit.tasks[unit.tasks.length - 1];
            int start = schedule.start[unit.tasks[0].index];
            int end = schedule.start[last.index];
            if (at + 1 == route.getUnits().size() || start == TimeAxis.NEVER || end == TimeAxis.NEVER) return 0;
            WorkTask next = route.getUnits().get(at + 1).tasks[0];
            int nextStart = schedule.start[next.index];
            if (nextStart == TimeAxis.NEVER) return 0;
            int way = problem.travel()[last.site][next.site] + next.setupAfter(last);
            return Math.max(0, nextStart - way - (end + last.minutes - start));
        }

        /** The start of the day on which it is done now or of one soon after, or some hour of that day. */
        private int laterMoment(CrewCalendar crew, Unit unit) {
            if (crew.days() == 0) return 0;
            int now = Math.max(0, lists.working.day[unit.tasks[0].index]);
            int day = Math.min(crew.days() - 1, now + random.nextInt(4));
            int hours = random.nextInt(2) == 0 ? 0 : random.nextInt(10);
            return Math.max(0, crew.from[day] + hours * 60);
        }
    }
}
