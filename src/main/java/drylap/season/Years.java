package drylap.season;

import drylap.season.Walk.Extra;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** Draws years on all processors; each has streams of chance of its own, so that their number matters to nothing. */
final class Years {
    private static final int STREAMS = 2;

    private final SiteSeason season;
    private final ForkJoinPool pool;
    private final Queue<Worker> idle = new ConcurrentLinkedQueue<>();
    private final int[] monthOf;

    private record Worker(DrawnSeason drawn, Walk walk) {}

    Years(SiteSeason season, ForkJoinPool pool) {
        this.season = season;
        this.pool = pool;
        monthOf = IntStream.range(0, season.calendar.days)
                .map(season.calendar::monthOf)
                .toArray();
    }

    Year[] run(int years, long seed) {
        var source = (JumpableUniformRandomProvider) RandomSource.XO_SHI_RO_256_PP.create(seed);
        UniformRandomProvider[] streams = source.jumps((long) STREAMS * years).toArray(UniformRandomProvider[]::new);
        Year[] all = new Year[years];
        pool.submit(() -> IntStream.range(0, years).parallel().forEach(year -> all[year] = one(year, streams)))
                .join();
        return all;
    }

    private Year one(int year, UniformRandomProvider[] streams) {
        Worker worker = idle.poll();
        if (worker == null) worker = new Worker(new DrawnSeason(season), new Walk(season));
        worker.drawn.draw(streams[STREAMS * year], streams[STREAMS * year + 1]);
        Year told = new Year(season, monthOf, worker.drawn, worker.walk);
        idle.add(worker);
        return told;
    }

    /** What is kept of a year. */
    static final class Year {
        /** Hours by wall and month. */
        final double[][] usable;
        /** Minutes by month, wall and task. */
        final double[][][] left;

        final Outcome plain;
        /** By task: one more crew from the start on. */
        final Outcome[] more;
        /** By task and month: one more crew in that month. */
        final Outcome[][] inMonth;

        Year(SiteSeason season, int[] monthOf, DrawnSeason drawn, Walk walk) {
            usable = new double[season.walls.size()][Season.MONTHS];
            for (int wall = 0; wall < usable.length; wall++)
                for (int day = 0; day < monthOf.length; day++)
                    usable[wall][monthOf[day]] += drawn.usable[0][wall][day] / 60;
            walk.run(drawn.usable, Extra.NONE);
            plain = Outcome.of(walk);
            left = new double[Season.MONTHS][][];
            for (int month = 0; month < left.length; month++) left[month] = copy(walk.atMonth[month]);
            int tasks = Season.TASKS.size();
            more = new Outcome[tasks];
            inMonth = new Outcome[tasks][Season.MONTHS];
            for (int task = 0; task < tasks; task++) oneMore(task, season, drawn, walk);
        }

        private void oneMore(int task, SiteSeason season, DrawnSeason drawn, Walk walk) {
            int days = season.calendar.days;
            more[task] = outcome(new Extra(task, 0, days), drawn, walk);
            for (int month = 0; month < Season.MONTHS; month++) {
                int from = season.calendar.firstDay(month);
                int until = month + 1 < Season.MONTHS ? season.calendar.firstDay(month + 1) : days;
                inMonth[task][month] = plain.last() < from ? plain : outcome(new Extra(task, from, until), drawn, walk);
            }
        }

        private static Outcome outcome(Extra extra, DrawnSeason drawn, Walk walk) {
            walk.run(drawn.usable, extra);
            return Outcome.of(walk);
        }

        private static double[][] copy(double[][] of) {
            double[][] copy = new double[of.length][];
            for (int i = 0; i < of.length; i++) copy[i] = of[i].clone();
            return copy;
        }
    }

    /** @param through by wall, as {@link Walk#through} */
    record Outcome(int[] through, double[] crewDays) {
        static Outcome of(Walk walk) {
            return new Outcome(walk.through.clone(), walk.crewDays.clone());
        }

        int last() {
            return IntStream.of(through).max().orElse(-1);
        }
    }
}
