package drylap.takeoff;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Cutting for whole sites, where searching for the best would take too long: the longest that still fits goes on the roll next.
 * That is first fit decreasing, from memory at most eleven ninths of the fewest rolls and a little (D. S. Johnson, 1973).
 */
final class FirstFit {
    private record Same(long length, Deque<Integer> places) {}

    private FirstFit() {}

    /**
     * The places of the lengths on each roll.
     *
     * @param lengths longest first, none longer than the roll
     */
    static List<List<Integer>> rolls(long[] lengths, long roll) {
        List<Same> left = same(lengths);
        List<List<Integer>> rolls = new ArrayList<>();
        while (!left.isEmpty()) {
            rolls.add(fill(left, roll));
            left.removeIf(same -> same.places().isEmpty());
        }
        return rolls;
    }

    private static List<Same> same(long[] lengths) {
        List<Same> all = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            if (all.isEmpty() || all.getLast().length() != lengths[i])
                all.add(new Same(lengths[i], new ArrayDeque<>()));
            all.getLast().places().add(i);
        }
        return all;
    }

    private static List<Integer> fill(List<Same> left, long roll) {
        List<Integer> places = new ArrayList<>();
        long room = roll;
        for (Same same : left)
            while (same.length() <= room && !same.places().isEmpty()) {
                places.add(same.places().removeFirst());
                room -= same.length();
            }
        return places;
    }
}
