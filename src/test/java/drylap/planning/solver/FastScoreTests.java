package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Rule;
import drylap.planning.JobFixture;
import drylap.planning.JobFolder;
import drylap.planning.PlanRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;

/** The fast score against OptaPlanner's own judge: after every move, the constraint streams score the same lists from nothing. */
class FastScoreTests {
    @ParameterizedTest
    @CsvSource({"8, 1, 400", "30, 2, 300", "120, 3, 120", "300, 4, 30"})
    void fast_score_equals_the_constraint_streams_after_every_move(int openings, long seed, long moves) {
        assertAgree(JobFixture.job(openings, seed), moves, seed);
    }

    @Test
    void they_agree_where_rain_lasts_otherwise() {
        JobFolder folder = JobFixture.job(30, 2);
        assertAgree(folder.withRules(folder.rules().with(null, Rule.RAIN_PERSISTENCE, 0.9)), 300, 2);
    }

    /** A search that leaves off what is worse must put everything back that it had decided by then. */
    @ParameterizedTest
    @CsvSource({"30, 2", "120, 3"})
    void a_search_in_a_hurry_claims_what_its_lists_decode_to(int openings, long seed) {
        PlanRequest request = new PlanRequest(null, null, 20_000L, seed);
        Problem problem = Problem.of(JobFixture.job(openings, seed), null);
        CrewLists first = Construction.firstLists(problem, new Meter()).lists();
        SolverConfig config = Search.config(request, 50, EnvironmentMode.REPRODUCIBLE);

        CrewLists solved = SolverFactory.<CrewLists>create(config).buildSolver().solve(first);

        assertThat(solved.getScore()).isEqualTo(CrewLists.scoreOf(solved.schedule().tally));
        assertThat(solved.getScore()).isGreaterThan(CrewLists.scoreOf(first.schedule().tally));
    }

    private static void assertAgree(JobFolder folder, long moves, long seed) {
        PlanRequest request = new PlanRequest(null, null, moves, seed);
        CrewLists first =
                Construction.firstLists(Problem.of(folder, null), new Meter()).lists();
        SolverConfig config = Search.config(request, 50, EnvironmentMode.FULL_ASSERT);
        config.getScoreDirectorFactoryConfig().withAssertionScoreDirectorFactory(Search.streams());

        CrewLists solved = SolverFactory.<CrewLists>create(config).buildSolver().solve(first);

        assertThat(solved.getScore().hardScore()).isZero();
        assertThat(solved.getScore()).isGreaterThanOrEqualTo(CrewLists.scoreOf(first.schedule().tally));
    }
}
