package drylap.planning.solver;

import drylap.planning.PlanRequest;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
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

/** How the search is set up: late acceptance over hand-made moves, scored by {@link FastScore}. */
final class Search {
    /** Short: coming down fast and beginning again nearby beat one long wandering by a third at 300 openings. */
    private static final int LATE_ACCEPTANCE_SIZE = 10;

    private Search() {}

    /** @param left the time that remains of the request's, if it has any */
    static SolverConfig config(PlanRequest request, @Nullable Duration left, EnvironmentMode mode) {
        TerminationConfig termination = new TerminationConfig();
        if (left != null) termination.withMillisecondsSpentLimit(Math.max(1, left.toMillis()));
        if (request.moves() != null) termination.withScoreCalculationCountLimit(request.moves());
        return new SolverConfig()
                .withSolutionClass(CrewLists.class)
                .withEntityClasses(Route.class)
                .withEnvironmentMode(mode)
                .withRandomSeed(request.seed())
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(FastScore.class))
                .withTerminationConfig(termination)
                .withPhases(phase());
    }

    private static LocalSearchPhaseConfig phase() {
        return new LocalSearchPhaseConfig()
                .withMoveSelectorConfig(new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(MoveMaker.class))
                .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE_SIZE))
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
