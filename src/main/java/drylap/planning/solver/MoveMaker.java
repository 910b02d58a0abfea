package drylap.planning.solver;

import java.util.BitSet;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.Move;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/** Draws moves that fit the problem: work goes to crews that may do it, mostly next to related work. */
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
        private static final int NEAR = 35;
        private static final int ANYWHERE = 50;
        private static final int SWAP = 68;
        private static final int RUN = 80;
        private static final int LONGEST_RUN = 8;

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
            Unit unit = units.get(random.nextInt(units.size()));
            int dice = random.nextInt(100);
            if (dice < NEAR) return nextTo(unit, relative(unit));
            if (dice < ANYWHERE) return anywhere(unit);
            if (dice < SWAP) return swap(unit, random.nextInt(2) == 0 ? relative(unit) : sameKind(unit));
            if (dice < RUN) return run(unit);
            return waiting(unit);
        }

        /** A unit of the same kind on the same facade; mostly there is one. */
        private Unit relative(Unit unit) {
            List<Unit> near = problem.relatives(unit);
            return near.get(random.nextInt(near.size()));
        }

        private Unit sameKind(Unit unit) {
            List<Unit> all = problem.units(unit.kind);
            return all.get(random.nextInt(all.size()));
        }

        private Move<CrewLists> nextTo(Unit unit, Unit other) {
            Route to = lists.positions.route(other);
            if (other == unit || !unit.fits(to.crew())) return anywhere(unit);
            return move(unit, 1, to, lists.positions.place(other) + random.nextInt(2));
        }

        private Move<CrewLists> anywhere(Unit unit) {
            Route to = someRoute(unit);
            return move(unit, 1, to, random.nextInt(to.getUnits().size() + 1));
        }

        private Route someRoute(Unit unit) {
            BitSet able = unit.crews();
            int crew = -1;
            for (int skip = random.nextInt(able.cardinality()); skip >= 0; skip--) crew = able.nextSetBit(crew + 1);
            return lists.getRoutes().get(crew);
        }

        private Move<CrewLists> move(Unit unit, int length, Route to, int before) {
            Route from = lists.positions.route(unit);
            int at = lists.positions.place(unit);
            int into = from == to && before > at ? Math.max(at, before - length) : before;
            return new MoveRun(from, at, length, to, into);
        }

        private Move<CrewLists> swap(Unit unit, Unit other) {
            Route left = lists.positions.route(unit);
            Route right = lists.positions.route(other);
            if (!unit.fits(right.crew()) || !other.fits(left.crew())) return anywhere(unit);
            return new SwapUnits(left, lists.positions.place(unit), right, lists.positions.place(other));
        }

        private Move<CrewLists> run(Unit unit) {
            Route from = lists.positions.route(unit);
            int at = lists.positions.place(unit);
            Route to = someRoute(unit);
            int length = 1;
            int most = Math.min(from.getUnits().size() - at, 2 + random.nextInt(LONGEST_RUN - 1));
            while (length < most && from.getUnits().get(at + length).fits(to.crew())) length++;
            return move(unit, length, to, random.nextInt(to.getUnits().size() + 1));
        }

        private Move<CrewLists> waiting(Unit unit) {
            Route route = lists.positions.route(unit);
            int at = lists.positions.place(unit);
            boolean stop = lists.notBefore[unit.index] > 0 && random.nextInt(2) == 0;
            return new Wait(route, at, stop ? 0 : laterMoment(route.crew(), unit));
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
