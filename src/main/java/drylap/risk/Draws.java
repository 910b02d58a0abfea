package drylap.risk;

import drylap.kernel.Rule;
import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.ContinuousDistribution;

/** What is drawn for one trial beside the weather: how long each job takes and when each delivery comes, in minutes. */
final class Draws {
    final int[] minutes;
    final int[] delivered;
    private final JobBook book;
    private final BetaPert[] spread;
    private final BetaPert[] late;

    Draws(JobBook book) {
        this.book = book;
        minutes = new int[book.jobs.length];
        delivered = new int[book.lots.size()];
        int sites = book.folder.sites().size();
        spread = new BetaPert[sites];
        late = new BetaPert[sites];
        for (int site = 0; site < sites; site++) {
            spread[site] = new BetaPert(book.rule(site, Rule.DURATION_BEST), 1, book.rule(site, Rule.DURATION_WORST));
            late[site] = new BetaPert(0, 0, book.rule(site, Rule.DELIVERY_WORST_DAYS));
        }
    }

    void draw(UniformRandomProvider work, UniformRandomProvider deliveries) {
        ContinuousDistribution.Sampler[] shares = samplers(spread, work);
        for (Job job : book.jobs)
            minutes[job.index] = Math.max(1, (int) Math.round(job.minutes * shares[job.site].sample()));
        ContinuousDistribution.Sampler[] days = samplers(late, deliveries);
        for (int lot = 0; lot < delivered.length; lot++)
            delivered[lot] = book.delivered(
                    book.lots.get(lot), (int) Math.floor(days[book.lots.get(lot).site()].sample()));
    }

    private static ContinuousDistribution.Sampler[] samplers(BetaPert[] of, UniformRandomProvider source) {
        return Arrays.stream(of).map(pert -> pert.sampler(source)).toArray(ContinuousDistribution.Sampler[]::new);
    }
}
