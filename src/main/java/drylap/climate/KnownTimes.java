package drylap.climate;

import drylap.kernel.TimeWindow;
import java.util.Arrays;
import java.util.List;

/** When a task may be done as far as is known beforehand: light, cold and gusts, but no rain. */
public final class KnownTimes {
    /** Takes a stretch of minutes. */
    public interface Stretches {
        void take(int from, int until);
    }

    private final int[] from;
    private final int[] until;

    KnownTimes(List<TimeWindow> windows, MinuteAxis axis) {
        from = windows.stream().mapToInt(window -> axis.ceil(window.from())).toArray();
        until = windows.stream().mapToInt(window -> axis.floor(window.until())).toArray();
    }

    /** The first start from a minute on at which so many minutes fit, or NEVER. */
    public int fit(int start, int minutes) {
        int found = Arrays.binarySearch(from, start);
        for (int i = Math.max(0, found >= 0 ? found : -found - 2); i < from.length; i++) {
            int at = Math.max(start, from[i]);
            if (at + minutes <= until[i]) return at;
        }
        return MinuteAxis.NEVER;
    }

    /** What of a stretch is open, in order. */
    public void within(int start, int end, Stretches taker) {
        int found = Arrays.binarySearch(from, start);
        for (int i = Math.max(0, found >= 0 ? found : -found - 2); i < from.length && from[i] < end; i++)
            if (Math.max(start, from[i]) < Math.min(end, until[i]))
                taker.take(Math.max(start, from[i]), Math.min(end, until[i]));
    }
}
