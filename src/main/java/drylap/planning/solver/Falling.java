package drylap.planning.solver;

import org.optaplanner.core.impl.phase.scope.AbstractPhaseScope;
import org.optaplanner.core.impl.solver.scope.SolverScope;
import org.optaplanner.core.impl.solver.termination.AbstractTermination;

/**
 * Ends nothing: lets a search cool by a constant factor, so that it is long where little is still taken that makes the plan dearer.
 * OptaPlanner's annealing is as hot as one less the greatest time gradient of all terminations, which by themselves make it
 * cool in a straight line.
 */
public class Falling extends AbstractTermination<CrewLists> {
    private static final double BY = 20;

    /** Of a search that is not to fall: what counts then is the straight line of the others. */
    static final Used NEVER = () -> 0;

    private Used used = NEVER;

    /** What part of its time or moves a search has used, 0 to 1. */
    @FunctionalInterface
    interface Used {
        double part();
    }

    @Override
    public void solvingStarted(SolverScope<CrewLists> scope) {
        used = scope.getBestSolution().used;
    }

    @Override
    public boolean isSolverTerminated(SolverScope<CrewLists> scope) {
        return false;
    }

    @Override
    public boolean isPhaseTerminated(AbstractPhaseScope<CrewLists> scope) {
        return false;
    }

    @Override
    public double calculateSolverTimeGradient(SolverScope<CrewLists> scope) {
        return 1 - Math.pow(BY, -used.part());
    }

    @Override
    public double calculatePhaseTimeGradient(AbstractPhaseScope<CrewLists> scope) {
        return calculateSolverTimeGradient(scope.getSolverScope());
    }
}
