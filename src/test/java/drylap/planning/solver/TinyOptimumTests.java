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
import org.junit.jupiter.params.provider.ValueSource;

/** Optima proved by OR-tools CP-SAT (com.google.ortools:ortools-java), a general constraint solver. */
class TinyOptimumTests {
    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @ParameterizedTest
    @CsvSource({"3, 1", "4, 2", "5, 3", "6, 1", "6, 2", "6, 3", "6, 5", "6, 6", "6, 7", "6, 8", "6, 12"})
    void the_planner_finds_the_proved_optimum(int openings, long seed) {
        findsTheOptimum(openings, seed, 60_000);
    }

    /** All of the first sixty jobs of eight openings that fit into their days, but those that take seconds. */
    @ParameterizedTest
    @ValueSource(longs = {3, 8, 12, 18, 22, 26, 30, 33, 34, 37, 38, 41, 42, 45, 48, 55, 56})
    void the_planner_finds_the_proved_optimum_of_eight_openings(long seed) {
        findsTheOptimum(8, seed, 400_000);
    }

    private static void findsTheOptimum(int openings, long seed, long moves) {
        JobFolder folder = TinyJob.of(openings, seed);

        Plan plan = Planner.standard().plan(folder, new PlanRequest(null, null, moves, 1), progress -> {}, () -> false);

        assertThat(plan.unplanned()).isEmpty();
        assertThat(plan.ledger().soft()).isEqualTo(ExactModel.leastCost(folder));
    }
}
