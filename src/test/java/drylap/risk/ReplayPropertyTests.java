package drylap.risk;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.climate.DrawnSky;
import java.util.BitSet;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.rng.simple.RandomSource;

/** Under the same work and deliveries. */
class ReplayPropertyTests {
    private static final JobBook BOOK = Demo.RAINY.book();

    @Property(tries = 60)
    void more_rain_never_hands_over_earlier(@ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int more) {
        Random random = new Random(seed);
        DrawnSky sky = new DrawnSky(BOOK.skies);
        Draws draws = new Draws(BOOK);
        draws.draw(RandomSource.XO_SHI_RO_256_PP.create(seed), RandomSource.XO_SHI_RO_256_PP.create(seed + 1));
        Replay replay = new Replay(BOOK, sky, draws);
        BitSet wet = some(random, 60);
        everywhere(sky, wet);
        replay.run();
        int[] before = replay.end.clone();
        for (int hour = 0; hour < more; hour++) wet.set(random.nextInt(BOOK.skies.hours()));
        everywhere(sky, wet);
        replay.run();

        for (Job job : BOOK.jobs)
            assertThat(replay.end[job.index]).as("%s", job.visit).isGreaterThanOrEqualTo(before[job.index]);
    }

    @Property(tries = 40)
    void nothing_begins_before_what_it_needs_or_before_its_planned_time(@ForAll long seed) {
        DrawnSky sky = new DrawnSky(BOOK.skies);
        Draws draws = new Draws(BOOK);
        draws.draw(RandomSource.XO_SHI_RO_256_PP.create(seed), RandomSource.XO_SHI_RO_256_PP.create(seed + 1));
        Replay replay = new Replay(BOOK, sky, draws);
        everywhere(sky, some(new Random(seed), 120));
        replay.run();

        for (Job job : BOOK.jobs) {
            int latestStart = replay.end[job.index] - draws.minutes[job.index];
            assertThat(latestStart).isGreaterThanOrEqualTo(job.planned);
            for (int other : job.after)
                assertThat(latestStart).as("%s", job.visit).isGreaterThanOrEqualTo(replay.end[other]);
        }
    }

    private static BitSet some(Random random, int hours) {
        BitSet wet = new BitSet();
        for (int hour = 0; hour < hours; hour++) wet.set(random.nextInt(BOOK.skies.hours()));
        return wet;
    }

    private static void everywhere(DrawnSky sky, BitSet wet) {
        for (int site = 0; site < BOOK.folder.sites().size(); site++) sky.set(site, wet, 1);
    }
}
