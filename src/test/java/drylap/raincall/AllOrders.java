package drylap.raincall;

import java.util.List;

/** The oracle: tries every order of every choice of openings and acts, and adds up the water minute by minute. */
final class AllOrders {
    /** What an opening is, with its rain written out: millionths of a litre in each minute. */
    record Hole(int closeMin, int closeBy, int coverMin, int coverLetsIn, long[] rain) {}

    record Best(long water, int left, int covered, int end) {}

    private final List<Hole> holes;
    private final int[] first;
    private final int[][] between;
    private final int minutes;
    private Best best = new Best(Long.MAX_VALUE, 0, 0, 0);

    private AllOrders(List<Hole> holes, int[] first, int[][] between, int minutes) {
        this.holes = holes;
        this.first = first;
        this.between = between;
        this.minutes = minutes;
    }

    static Best of(List<Hole> holes, int[] first, int[][] between, int minutes) {
        var orders = new AllOrders(holes, first, between, minutes);
        orders.go(new boolean[holes.size()], -1, 0, 0, 0, 0);
        return orders.best;
    }

    private void go(boolean[] done, int last, int clock, long water, int covered, int visits) {
        judge(done, clock, water, covered, visits);
        for (int i = 0; i < holes.size(); i++) {
            if (done[i]) continue;
            Hole hole = holes.get(i);
            int there = clock + (last < 0 ? first[i] : between[last][i]);
            done[i] = true;
            int closed = there + hole.closeMin;
            if (closed <= minutes && closed <= hole.closeBy)
                go(done, i, closed, water + fallen(hole, 0, closed), covered, visits + 1);
            int over = there + hole.coverMin;
            if (over <= minutes) {
                long behind = fallen(hole, over, minutes) * hole.coverLetsIn / 1000;
                go(done, i, over, water + fallen(hole, 0, over) + behind, covered + 1, visits + 1);
            }
            done[i] = false;
        }
    }

    private void judge(boolean[] done, int clock, long soFar, int covered, int visits) {
        long water = soFar;
        for (int i = 0; i < holes.size(); i++) if (!done[i]) water += fallen(holes.get(i), 0, minutes);
        int left = holes.size() - visits;
        boolean better = water != best.water
                ? water < best.water
                : left != best.left
                        ? left < best.left
                        : covered != best.covered ? covered < best.covered : clock < best.end;
        if (better) best = new Best(water, left, covered, clock);
    }

    private static long fallen(Hole hole, int from, int until) {
        long sum = 0;
        for (int minute = from; minute < until; minute++) sum += hole.rain[minute];
        return sum;
    }
}
