package drylap.planning.solver;

import drylap.planning.LedgerTerm;
import java.util.Iterator;
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

    static final class Draw implements Iterator<Move<CrewLists>> {
        /** Of a thousand draws, where something stays out. */
        private static final int LEFT_OUT = 50;

        private static final int LONGEST_RUN = 8;
        private static final int TRIES = 8;

        private final CrewLists lists;
        private final Problem problem;
        private final Random random;
        private final Lots lots;
        private final Mix mix;

        Draw(CrewLists lists, Random random) {
            this.lists = lists;
            this.random = random;
            problem = lists.problem();
            lots = new Lots(lists, random);
            mix = Mix.of(lists);
        }

        @Override
        public boolean hasNext() {
            return !lists.getUnits().isEmpty();
        }

        @Override
        public ListMove next() {
            Schedule schedule = lists.working;
            if (schedule.listsChanged()) schedule.settleStep();
            int dice = random.nextInt(1000);
            if (dice >= 1000 - LEFT_OUT && schedule.tally.medium() > 0) {
                ListMove move = Rebuilding.ofWhatStaysOut(lots, this::elsewhere);
                if (move != null) return move;
            }
            if (dice < mix.rebuilds()) return Rebuilding.draw(lots, this::elsewhere);
            ListMove move = dice < mix.rebuilds() + mix.drier() && itMayRain() ? DrierRun.draw(lots) : draw();
            for (int tries = 1; tries < TRIES && (move.idle(lists) || move.closesRing(schedule.rings)); tries++)
                move = draw();
            return move;
        }

        /** Else nothing that is to be planned stands in rain. */
        private boolean itMayRain() {
            return lists.working.tally.amount(LedgerTerm.RAIN_RISK) > 0;
        }

        private ListMove elsewhere(Unit unit) {
            return random.nextInt(3) == 0 ? nextTo(unit, lots.relative(unit)) : inTime(unit, 1, lots.someRoute(unit));
        }

        private ListMove draw() {
            Unit unit = random.nextInt(100) < mix.costly() ? lots.costly() : lots.unit();
            int dice = random.nextInt(100);
            if (dice < mix.near()) return nextTo(unit, lots.relative(unit));
            if (dice < mix.inTime()) return inTime(unit, 1, lots.someRoute(unit));
            if (dice < mix.anywhere()) return anywhere(unit);
            if (dice < mix.swap()) return mix.beside() == 0 ? swap(unit) : swapBeside(unit);
            if (dice < mix.run()) return run(unit);
            if (dice < mix.tails()) return tails(unit);
            return waiting(unit);
        }

        private ListMove nextTo(Unit unit, Unit other) {
            Route to = lists.working.positions.route(other);
            if (other == unit || !unit.fits(to.crew())) return inTime(unit, 1, lots.someRoute(unit));
            return move(unit, 1, to, lists.working.positions.place(other) + random.nextInt(2));
        }

        private ListMove anywhere(Unit unit) {
            Route to = lots.someRoute(unit);
            return move(unit, 1, to, random.nextInt(to.getUnits().size() + 1));
        }

        private ListMove inTime(Unit unit, int length, Route to) {
            return move(unit, length, to, lots.placeInTime(unit, to));
        }

        private ListMove move(Unit unit, int length, Route to, int before) {
            MoveRun move = lots.run(unit, length, to, before);
            int dice = random.nextInt(4);
            return dice == 0 ? move : move.waitingUntil(dice == 1 ? 0 : lots.momentAt(to, before, unit));
        }

        private ListMove swap(Unit unit) {
            return swap(unit, random.nextInt(2) == 0 ? lots.relative(unit) : lots.contemporary(unit), false);
        }

        /** What changes places with a relative, mostly its like, gains little. */
        private ListMove swapBeside(Unit unit) {
            boolean beside = random.nextInt(100) < mix.beside();
            Unit other = beside ? lots.beside(lots.relative(unit)) : lots.contemporary(unit);
            return swap(unit, other, random.nextBoolean());
        }

        private ListMove swap(Unit unit, Unit other, boolean waitsToo) {
            if (!lists.focus.has(other)) return inTime(unit, 1, lots.someRoute(unit));
            Route left = lists.working.positions.route(unit);
            Route right = lists.working.positions.route(other);
            if (!unit.fits(right.crew()) || !other.fits(left.crew())) return inTime(unit, 1, lots.someRoute(unit));
            return new SwapUnits(
                    left, lists.working.positions.place(unit), right, lists.working.positions.place(other), waitsToo);
        }

        private ListMove run(Unit unit) {
            Route from = lists.working.positions.route(unit);
            int at = lists.working.positions.place(unit);
            Route to = lots.someRoute(unit);
            int length = 1;
            int most = Math.min(from.getUnits().size() - at, 2 + random.nextInt(LONGEST_RUN - 1));
            while (length < most && mayGo(from.getUnits().get(at + length), to)) length++;
            return inTime(unit, length, to);
        }

        private boolean mayGo(Unit unit, Route to) {
            return lists.focus.has(unit) && unit.fits(to.crew());
        }

        /** What two crews do from about the same time on changes hands. */
        private ListMove tails(Unit unit) {
            Route left = lists.working.positions.route(unit);
            Route right = lots.someRoute(unit);
            int at = lists.working.positions.place(unit);
            return left == right || !lists.focus.isEverything()
                    ? run(unit)
                    : new SwapTails(left, at, right, lots.placeInTime(unit, right));
        }

        private ListMove waiting(Unit unit) {
            Route route = lists.working.positions.route(unit);
            int at = lists.working.positions.place(unit);
            int dice = random.nextInt(7);
            if (dice < 2 && lists.notBefore[unit.index] > 0) return new Wait(route, at, 0);
            if (dice < 4) return new Wait(route, at, lots.laterMoment(route.crew(), unit));
            return new Wait(route, at, dice < 6 ? upToThePause(route, at, unit) : endingWithTheCourse(unit));
        }

        /** So late that it ends with the last of its course, which keeps the course open for less long. */
        private int endingWithTheCourse(Unit unit) {
            Schedule schedule = lists.working;
            int end = schedule.ends.last(unit.course, unit.kind);
            return Math.max(0, end - unit.minutes());
        }

        /** So late that the crew goes on to its next unit, its break or its way home at once: a course is open for less long. */
        private int upToThePause(Route route, int at, Unit unit) {
            Schedule schedule = lists.working;
            WorkTask last = unit.tasks[unit.tasks.length - 1];
            int start = schedule.start[unit.tasks[0].index];
            int end = schedule.start[last.index];
            if (start == TimeAxis.NEVER || end == TimeAxis.NEVER) return 0;
            int pause = route.crew().pauseAfter(schedule.day[last.index], end, last.site);
            return Math.max(0, Math.min(pause, leavesForTheNext(route, at, last)) - (end + last.minutes - start));
        }

        /** When the crew has to leave; NEVER where nothing follows that has a place. */
        private int leavesForTheNext(Route route, int at, WorkTask last) {
            if (at + 1 == route.getUnits().size()) return TimeAxis.NEVER;
            WorkTask next = route.getUnits().get(at + 1).tasks[0];
            int nextStart = lists.working.start[next.index];
            if (nextStart == TimeAxis.NEVER) return TimeAxis.NEVER;
            return nextStart - problem.travel()[last.site][next.site] - next.setupAfter(last);
        }
    }
}
