package drylap.takeoff;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The one-dimensional cutting-stock problem of a day, exactly: fewest rolls, then the least on the roll that has least, by
 * depth-first search over the lengths in falling order. Rolls with as much on them are alike, and so are equal lengths.
 */
final class Cutting {
    private static final int MOST_STEPS = 300_000;

    private final long[] lengths;
    private final long roll;
    private final long[] after;
    private final int[] of;
    private final long[] used;
    private int[] best;
    private int fewest;
    private long least;
    private int steps;

    /** @param lengths longest first, none longer than the roll */
    Cutting(long[] lengths, long roll) {
        this.lengths = lengths;
        this.roll = roll;
        of = new int[lengths.length];
        used = new long[lengths.length];
        after = new long[lengths.length + 1];
        for (int i = lengths.length - 1; i >= 0; i--) after[i] = after[i + 1] + lengths[i];
        best = new int[lengths.length];
        fewest = Integer.MAX_VALUE;
        place(0, 0);
    }

    boolean proved() {
        return steps < MOST_STEPS;
    }

    /** The places of the lengths on each roll, the fullest roll first. */
    List<List<Integer>> rolls() {
        List<List<Integer>> rolls = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            while (rolls.size() <= best[i]) rolls.add(new ArrayList<>());
            rolls.get(best[i]).add(i);
        }
        rolls.sort((one, other) -> Long.compare(on(other), on(one)));
        return rolls;
    }

    private long on(List<Integer> places) {
        return places.stream().mapToLong(place -> lengths[place]).sum();
    }

    private void place(int next, int rolls) {
        if (steps >= MOST_STEPS || hopeless(next, rolls)) return;
        steps++;
        if (next == lengths.length) {
            note(rolls);
            return;
        }
        long tried = -1; // rolls with as much on them follow each other
        int first = next > 0 && lengths[next] == lengths[next - 1] ? of[next - 1] : 0;
        for (int at : fullestFirst(rolls)) {
            if (at < first || used[at] + lengths[next] > roll || used[at] == tried) continue;
            tried = used[at];
            put(next, at, rolls);
        }
        put(next, rolls, rolls + 1);
    }

    private void put(int next, int at, int rolls) {
        of[next] = at;
        used[at] += lengths[next];
        place(next + 1, rolls);
        used[at] -= lengths[next];
    }

    private Integer[] fullestFirst(int rolls) {
        Integer[] order = new Integer[rolls];
        Arrays.setAll(order, at -> at);
        Arrays.sort(order, (one, other) -> Long.compare(used[other], used[one]));
        return order;
    }

    /** However the others are laid, it comes to no fewer rolls, nor to less on the last of as many. */
    private boolean hopeless(int next, int rolls) {
        long room = 0;
        for (int at = 0; at < rolls; at++) room += roll - used[at];
        long more = Math.max(0, after[next] - room);
        int all = rolls + Math.toIntExact(Math.ceilDiv(more, roll));
        if (all != fewest) return all > fewest;
        long leastOnLast = after[0] - (all - 1) * roll;
        return least <= Math.max(leastOnLast, 0);
    }

    private void note(int rolls) {
        long on = Arrays.stream(used, 0, rolls).min().orElse(0);
        if (rolls > fewest || rolls == fewest && on >= least) return;
        fewest = rolls;
        least = on;
        best = of.clone();
    }
}
