package drylap.planning.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * How much worse a search may make a plan at first: in proportion to what moves cost that make this plan worse, so that it holds
 * for any weights. Every other way of setting it would have to know the folder's rules.
 *
 * @param samples moves that are tried
 * @param oneIn of those that make the plan worse, one in so many is cheaper than the one that counts
 * @param part of what that one costs, one in so many
 */
record Heat(int samples, int oneIn, int part) {
    private static final long LEAST = 1;

    /** For these lists, by moves drawn with this seed. */
    long of(CrewLists lists, long seed) {
        CrewLists own = new CrewLists.Cloner().cloneSolution(lists);
        own.meter = new Meter();
        own.working = own.schedule();
        return Math.max(LEAST, cheap(own, new Random(seed)) / part);
    }

    private long cheap(CrewLists lists, Random random) {
        Tally tally = lists.working.tally;
        MoveMaker.Draw draw = new MoveMaker.Draw(lists, random);
        Trial trial = new Trial(lists);
        List<Long> worse = new ArrayList<>();
        for (int i = 0; i < samples; i++) {
            boolean made = trial.of(draw.next());
            if (made && trial.medium == tally.medium() && trial.soft > tally.soft())
                worse.add(trial.soft - tally.soft());
        }
        if (worse.isEmpty()) return LEAST;
        Collections.sort(worse);
        return worse.get(worse.size() / oneIn);
    }
}
