package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Optima proved by OR-tools CP-SAT (com.google.ortools:ortools-java), a general constraint solver. */
class TinyOptimumTests {
    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @ParameterizedTest
    @CsvSource({"3, 1", "4, 2", "5, 3", "6, 1", "6, 2", "6, 3", "6, 5", "6, 6", "6, 7", "6, 8", "6, 12"})
    void the_planner_finds_the_proved_optimum(int openings, long seed) {
        JobFolder folder = TinyJob.of(openings, seed);

        Plan plan =
                Planner.standard().plan(folder, new PlanRequest(null, null, 60_000L, 1), progress -> {}, () -> false);

        assertThat(plan.unplanned()).isEmpty();
        assertThat(plan.ledger().soft()).isEqualTo(ExactModel.leastCost(folder));
    }
}
