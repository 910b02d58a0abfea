package drylap.planning.solver;

import drylap.weather.SiteWeather;
import java.time.Duration;
import java.util.Arrays;

/** Chances of rain over the touched hours of a site, in thousandths, remembered: a search asks for the same stretch often. */
final class RainOdds {
    private static final int HOUR = 60;
    private static final int LONGEST_H = 24;
    private static final short UNKNOWN = -1;

    private final SiteWeather weather;
    private final TimeAxis axis;
    private final int gridStart;
    private final short[][] byHour;

    /** @param gridStart a minute, not positive, at which a forecast hour begins */
    RainOdds(SiteWeather weather, TimeAxis axis, int gridStart, int lastMinute) {
        this.weather = weather;
        this.axis = axis;
        this.gridStart = gridStart;
        byHour = new short[(lastMinute - gridStart) / HOUR + 2][];
    }

    int thousandths(int start, int end) {
        if (start < gridStart) return compute(start, end); // a pinned visit may have begun before the plan
        int first = (start - gridStart) / HOUR;
        int hours = (end - 1 - gridStart) / HOUR - first;
        if (hours >= LONGEST_H || first >= byHour.length) return compute(start, end);
        short[] known = byHour[first];
        if (known == null) {
            known = new short[LONGEST_H];
            Arrays.fill(known, UNKNOWN);
            byHour[first] = known;
        }
        if (known[hours] == UNKNOWN) known[hours] = (short) compute(start, end);
        return known[hours];
    }

    /** The first minute from {@code minute} on at which an hour begins. */
    int hourFrom(int minute) {
        return gridStart + Math.ceilDiv(minute - gridStart, HOUR) * HOUR;
    }

    private int compute(int start, int end) {
        return (int) Math.round(1000 * weather.chanceOfRain(axis.at(start), axis.at(end)));
    }

    static int gridStart(TimeAxis axis, java.time.Instant anyHourStart) {
        long offset = Duration.between(axis.zero(), anyHourStart).toMinutes();
        return (int) Math.floorMod(offset, (long) HOUR) == 0 ? 0 : (int) Math.floorMod(offset, (long) HOUR) - HOUR;
    }
}
