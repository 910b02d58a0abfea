package drylap.planning.solver;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import drylap.planning.solver.JobShop.Operation;
import java.util.ArrayList;
import java.util.List;

/** A job shop as the textbook has it, for OR-tools' CP-SAT. */
final class JobShopModel {
    private JobShopModel() {}

    /** The proved least end of the last operation. */
    static long leastEnd(JobShop shop) {
        CpModel model = new CpModel();
        int horizon = shop.jobs().stream()
                .flatMap(List::stream)
                .mapToInt(Operation::time)
                .sum();
        IntVar end = model.newIntVar(0, horizon, "end");
        List<List<IntervalVar>> machines = new ArrayList<>();
        for (int machine = 0; machine < shop.machines(); machine++) machines.add(new ArrayList<>());
        for (List<Operation> job : shop.jobs()) {
            LinearExpr ready = LinearExpr.constant(0);
            for (Operation operation : job) {
                IntVar start = model.newIntVar(0, horizon, "start");
                model.addGreaterOrEqual(start, ready);
                machines.get(operation.machine()).add(model.newFixedSizeIntervalVar(start, operation.time(), "run"));
                ready = LinearExpr.affine(start, 1, operation.time());
            }
            model.addGreaterOrEqual(end, ready);
        }
        machines.forEach(model::addNoOverlap);
        model.minimize(end);
        CpSolver solver = new CpSolver();
        // one thread that reasons without linear relaxations proves ft10 in seconds, the usual mixture in minutes
        solver.getParameters().setMaxTimeInSeconds(120).setNumWorkers(1).setLinearizationLevel(0);
        CpSolverStatus status = solver.solve(model);
        if (status != CpSolverStatus.OPTIMAL) throw new IllegalStateException("no proof: " + status);
        return Math.round(solver.objectiveValue());
    }
}
