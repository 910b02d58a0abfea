package drylap.planning.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * How much worse a search may make a plan at first: in proportion to what moves cost that make this plan worse, so that it holds
 * for any weights. Every other way of setting it would have to know the folder's rules.
 */
final class Heat {
    private static final int SAMPLES = 400;
    private static final int QUARTER = 4;
    private static final long LEAST = 1;

    private Heat() {}

    /** A part, one of so many, of the lower quartile of what moves from these lists cost, drawn with this seed. */
    static long of(CrewLists lists, long seed, int part) {
        CrewLists own = new CrewLists.Cloner().cloneSolution(lists);
        own.meter = new Meter();
        own.working = own.schedule();
        return Math.max(LEAST, lowerQuartile(own, new Random(seed)) / part);
    }

    private static long lowerQuartile(CrewLists lists, Random random) {
        Tally tally = lists.working.tally;
        MoveMaker.Draw draw = new MoveMaker.Draw(lists, random);
        Trial trial = new Trial(lists);
        List<Long> worse = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            boolean made = trial.of(draw.next());
            if (made && trial.medium == tally.medium() && trial.soft > tally.soft())
                worse.add(trial.soft - tally.soft());
        }
        if (worse.isEmpty()) return LEAST;
        Collections.sort(worse);
        return worse.get(worse.size() / QUARTER);
    }
}
