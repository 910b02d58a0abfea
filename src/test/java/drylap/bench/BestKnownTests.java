package drylap.bench;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.bench.BestKnown.Cost;
import drylap.bench.BestKnown.Job;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BestKnownTests {
    private static final Job JOB = new Job(300, 1);

    @TempDir
    Path folder;

    private BestKnown read() {
        return BestKnown.read(folder.resolve("best.csv"));
    }

    @Test
    void a_better_cost_is_kept_in_the_file() {
        read().offer(JOB, new Cost(1_000, 10));
        read().offer(JOB, new Cost(0, 99));

        assertThat(read().of(JOB)).contains(new Cost(0, 99));
    }

    @Test
    void a_worse_cost_changes_nothing() {
        read().offer(JOB, new Cost(0, 99));
        read().offer(JOB, new Cost(1_000, 10));
        read().offer(JOB, new Cost(0, 100));

        assertThat(read().of(JOB)).contains(new Cost(0, 99));
    }

    @Test
    void jobs_do_not_mix() {
        read().offer(JOB, new Cost(0, 99));

        assertThat(read().of(new Job(300, 2))).isEmpty();
        assertThat(read().of(new Job(3_000, 1))).isEmpty();
    }
}
