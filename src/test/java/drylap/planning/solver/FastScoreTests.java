package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.planning.JobFixture;
import drylap.planning.JobFolder;
import drylap.planning.PlanRequest;
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
        JobFolder folder = JobFixture.job(openings, seed);
        PlanRequest request = new PlanRequest(null, null, moves, seed);
        CrewLists first = Construction.firstLists(Problem.of(folder, null), new Meter());
        SolverConfig config = Search.config(request, 50, EnvironmentMode.FULL_ASSERT);
        config.getScoreDirectorFactoryConfig().withAssertionScoreDirectorFactory(Search.streams());

        CrewLists solved = SolverFactory.<CrewLists>create(config).buildSolver().solve(first);

        assertThat(solved.getScore().hardScore()).isZero();
        assertThat(solved.getScore()).isGreaterThanOrEqualTo(CrewLists.scoreOf(first.schedule().tally));
    }
}
