package drylap.weather;

import drylap.kernel.TimeWindow;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** The whole minutes of a span, each marked or not; as bits, because a season of them is joined in microseconds. */
final class MinuteMarks {
    private static final long SECONDS = 60;

    private final long origin;
    private final int length;
    private final BitSet marked;

    private MinuteMarks(long origin, int length, BitSet marked) {
        this.origin = origin;
        this.length = length;
        this.marked = marked;
    }

    static MinuteMarks none(TimeWindow span) {
        long origin = minuteAtOrAfter(span.from());
        long end = Math.max(origin, minuteAtOrBefore(span.until()));
        return new MinuteMarks(origin, Math.toIntExact(end - origin), new BitSet());
    }

    static MinuteMarks all(TimeWindow span) {
        MinuteMarks all = none(span);
        all.marked.set(0, all.length);
        return all;
    }

    /** Marks every minute that the stretch touches, even by a second. */
    void mark(Instant from, Instant until) {
        int first = place(minuteAtOrBefore(from));
        int end = place(minuteAtOrAfter(until));
        if (first < end) marked.set(first, end);
    }

    /** Unmarks the minutes that lie wholly in the stretch. */
    void unmark(Instant from, Instant until) {
        int first = place(minuteAtOrAfter(from));
        int end = place(minuteAtOrBefore(until));
        if (first < end) marked.clear(first, end);
    }

    MinuteMarks and(MinuteMarks... more) {
        MinuteMarks joined = new MinuteMarks(origin, length, (BitSet) marked.clone());
        for (MinuteMarks other : more) joined.marked.or(other.marked);
        return joined;
    }

    boolean isEmpty() {
        return marked.isEmpty();
    }

    List<TimeWindow> marked() {
        List<TimeWindow> windows = new ArrayList<>();
        for (int from = marked.nextSetBit(0); from >= 0; ) {
            int until = marked.nextClearBit(from);
            windows.add(window(from, until));
            from = marked.nextSetBit(until);
        }
        return List.copyOf(windows);
    }

    List<TimeWindow> unmarked() {
        List<TimeWindow> windows = new ArrayList<>();
        for (int from = marked.nextClearBit(0); from < length; ) {
            int next = marked.nextSetBit(from);
            int until = next < 0 ? length : next;
            windows.add(window(from, until));
            from = marked.nextClearBit(until);
        }
        return List.copyOf(windows);
    }

    private TimeWindow window(int from, int until) {
        return new TimeWindow(instant(from), instant(until));
    }

    private Instant instant(int place) {
        return Instant.ofEpochSecond((origin + place) * SECONDS);
    }

    private int place(long minute) {
        return (int) Math.clamp(minute - origin, 0, length);
    }

    private static long minuteAtOrBefore(Instant instant) {
        return Math.floorDiv(instant.getEpochSecond(), SECONDS);
    }

    private static long minuteAtOrAfter(Instant instant) {
        boolean whole = instant.equals(instant.truncatedTo(ChronoUnit.MINUTES));
        return minuteAtOrBefore(instant) + (whole ? 0 : 1);
    }
}
