package drylap.planning.solver;

import drylap.planning.PlanRequest;
import java.util.Map;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/** How the search is set up: simulated annealing over hand-made moves, scored by {@link FastScore}. */
final class Search {
    private Search() {}

    /** @param heat the soft cost by which a plan may at first get worse with a chance of one in e; at the end none */
    static SolverConfig config(PlanRequest request, long heat, EnvironmentMode mode) {
        TerminationConfig termination = new TerminationConfig();
        if (request.time() != null)
            termination.withMillisecondsSpentLimit(Math.max(1, request.time().toMillis()));
        if (request.moves() != null) termination.withScoreCalculationCountLimit(request.moves());
        return new SolverConfig()
                .withSolutionClass(CrewLists.class)
                .withEntityClasses(Route.class)
                .withEnvironmentMode(mode)
                .withRandomSeed(request.seed())
                .withScoreDirectorFactory(fast(mode))
                .withTerminationConfig(termination)
                .withPhases(phase(heat));
    }

    /** What asserts needs every plan's whole cost. */
    private static ScoreDirectorFactoryConfig fast(EnvironmentMode mode) {
        boolean hurried = !mode.isAsserted();
        return new ScoreDirectorFactoryConfig()
                .withIncrementalScoreCalculatorClass(FastScore.class)
                .withIncrementalScoreCalculatorCustomProperties(Map.of("hurried", Boolean.toString(hurried)));
    }

    private static LocalSearchPhaseConfig phase(long heat) {
        return new LocalSearchPhaseConfig()
                .withMoveSelectorConfig(new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(MoveMaker.class))
                .withAcceptorConfig(new LocalSearchAcceptorConfig()
                        .withSimulatedAnnealingStartingTemperature("0hard/0medium/" + heat + "soft"))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    }

    /** Scores finished lists by the constraint streams. */
    static SolverFactory<CrewLists> judging() {
        return SolverFactory.create(new SolverConfig()
                .withSolutionClass(CrewLists.class)
                .withEntityClasses(Route.class)
                .withScoreDirectorFactory(streams()));
    }

    static ScoreDirectorFactoryConfig streams() {
        return new ScoreDirectorFactoryConfig()
                .withConstraintProviderClass(PlanConstraints.class)
                .withConstraintStreamImplType(ConstraintStreamImplType.BAVET);
    }
}
