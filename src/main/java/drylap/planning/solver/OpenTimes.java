package drylap.planning.solver;

import drylap.kernel.TimeWindow;
import java.util.List;

/** The open windows of a facade and task in minutes, with an index by slots, so that a look-up costs nanoseconds. */
final class OpenTimes {
    private static final int SLOT_BITS = 6;

    private final int[] from;
    private final int[] until;
    private final int[] firstBySlot;

    OpenTimes(List<TimeWindow> windows, TimeAxis axis) {
        from = windows.stream().mapToInt(window -> axis.ceil(window.from())).toArray();
        until = windows.stream().mapToInt(window -> axis.floor(window.until())).toArray();
        int last = until.length == 0 ? 0 : until[until.length - 1];
        firstBySlot = new int[(Math.max(last, 0) >> SLOT_BITS) + 2];
        int window = 0;
        for (int slot = 0; slot < firstBySlot.length; slot++) {
            while (window < until.length && until[window] <= slot << SLOT_BITS) window++;
            firstBySlot[slot] = window;
        }
    }

    /** The first start from {@code earliest} (not negative) at which {@code minutes} in a row are open; NEVER if there is none. */
    int firstFit(int earliest, int minutes) {
        int slot = earliest >> SLOT_BITS;
        if (slot >= firstBySlot.length) return TimeAxis.NEVER;
        for (int window = firstBySlot[slot]; window < until.length; window++) {
            int start = Math.max(earliest, from[window]);
            if (start + minutes <= until[window]) return start;
        }
        return TimeAxis.NEVER;
    }

    /** Whether all of a stretch is open; what lies before the plan's start is done and not judged. */
    boolean open(int start, int end) {
        int from = Math.max(start, 0);
        return end <= from || firstFit(from, end - from) == from;
    }
}
