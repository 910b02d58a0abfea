package drylap.season;

import drylap.climate.DrawnSky;
import drylap.kernel.Rule;
import drylap.season.WorkingWeek.Stretch;
import java.util.BitSet;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;

/** One drawn year after the other: how long each trade could work at each wall, day by day. */
final class DrawnSeason {
    private static final int HOUR = 60;

    private final SiteSeason season;
    private final DrawnSky sky;
    private final double[] lost;
    private final int grid;
    private final int skin;
    /** Minutes of one crew, on the mean of the trade's crews, by task, wall and day. */
    final double[][][] usable;

    DrawnSeason(SiteSeason season) {
        this.season = season;
        sky = new DrawnSky(season.skies);
        lost = season.lostDays();
        grid = season.sky().grid();
        skin = season.minutes(Rule.SKIN_MIN);
        usable = new double[Season.TASKS.size()][season.walls.size()][season.calendar.days];
    }

    void draw(UniformRandomProvider weather, UniformRandomProvider days) {
        sky.draw(weather);
        BitSet wet = sky.wet(0);
        for (int wall = 0; wall < season.walls.size(); wall++) {
            reckon(0, wall, sky.shut(wall), skin);
            reckon(1, wall, wet, 0);
            reckon(2, wall, wet, 0);
        }
        for (int day = 0; day < lost.length; day++)
            if (lost[day] > 0 && days.nextDouble() < lost[day]) for (double[] wall : usable[0]) wall[day] = 0;
    }

    private void reckon(int task, int wall, BitSet shut, int lead) {
        List<List<Stretch>> of = season.stretches.get(task);
        int crews = season.weeks[task].crews;
        int least = season.walls.get(wall).least[task];
        for (int day = 0; day < of.size(); day++) {
            double sum = 0;
            for (Stretch part : of.get(day))
                sum += part.crews() * (double) open(part.from(), part.until(), shut, lead, least);
            usable[task][wall][day] = crews == 0 ? 0 : sum / crews;
        }
    }

    /**
     * The minutes of those parts of a stretch that are long enough. A shut hour after an open one always begins with rain, so that
     * what must skin before it ends earlier.
     */
    private int open(int from, int until, BitSet shut, int lead, int least) {
        return open(from, until, shut, grid, lead, least);
    }

    static int open(int from, int until, BitSet shut, int grid, int lead, int least) {
        int total = 0;
        for (int at = from; at < until; ) {
            int hour = Math.floorDiv(at - grid, HOUR);
            if (shut.get(hour)) {
                at = grid + shut.nextClearBit(hour) * HOUR;
                continue;
            }
            int rain = shut.nextSetBit(hour);
            int next = rain < 0 ? until : grid + rain * HOUR;
            int end = rain < 0 ? until : Math.min(until, next - lead);
            if (end - at >= least) total += end - at;
            at = next;
        }
        return total;
    }
}
