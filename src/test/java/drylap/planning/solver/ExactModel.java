package drylap.planning.solver;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import drylap.crews.Crew;
import drylap.crews.Shift;
import drylap.kernel.Course;
import drylap.kernel.CrewId;
import drylap.kernel.FacadeId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.sites.Facade;
import drylap.sites.Opening;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A {@link TinyJob} written from the contract for OR-tools' CP-SAT, with minute-wise starts: each task in one half of one shift
 * of one crew, no two at once, cladding after its course's installs and the cladding below; the cost is late hand-over, crew
 * days and open courses. Shares no code with the planner but the folder's own numbers.
 */
final class ExactModel {
    private record Key(Opening opening, Task task) {}

    private final JobFolder folder;
    private final Instant zero;
    private final CpModel model = new CpModel();
    private final Map<Key, IntVar> starts = new HashMap<>();
    private final Map<CrewId, List<IntervalVar>> byCrew = new HashMap<>();
    private final Map<CrewId, Map<LocalDate, List<BoolVar>>> presences = new HashMap<>();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();
    private final int horizon;

    private ExactModel(JobFolder folder) {
        this.folder = folder;
        zero = folder.shifts().stream()
                .map(Shift::startsAt)
                .min(Instant::compareTo)
                .orElseThrow();
        horizon = folder.shifts().stream()
                .mapToInt(shift -> minute(shift.endsAt()))
                .max()
                .orElseThrow();
    }

    /** The proved least cost. */
    static long leastCost(JobFolder folder) {
        ExactModel exact = new ExactModel(folder);
        exact.build();
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(120).setNumWorkers(2);
        CpSolverStatus status = solver.solve(exact.model);
        if (status != CpSolverStatus.OPTIMAL) throw new IllegalStateException("no proof: " + status);
        return Math.round(solver.objectiveValue());
    }

    private void build() {
        for (Opening opening : folder.openings()) {
            place(opening, Task.INSTALL);
            place(opening, Task.CLAD);
        }
        byCrew.values().forEach(model::addNoOverlap);
        folder.openings().forEach(this::order);
        folder.facades().forEach(this::lateHandover);
        folder.openings().stream().map(Opening::course).distinct().forEach(this::openCourse);
        presences.values().forEach(dates -> dates.values().forEach(this::crewDay));
        model.minimize(cost);
    }

    private int minute(Instant instant) {
        return (int) Duration.between(zero, instant).toMinutes();
    }

    private int length(Opening opening, Task task) {
        return folder.labour().minutes(opening, task);
    }

    private void place(Opening opening, Task task) {
        IntVar start = model.newIntVar(0, horizon, task.code() + opening.id());
        starts.put(new Key(opening, task), start);
        List<Literal> options = new ArrayList<>();
        for (Crew crew : folder.crews())
            if (crew.trade() == task.trade())
                for (Shift shift : folder.shifts())
                    if (shift.crew().equals(crew.id())) options.addAll(halves(opening, task, start, shift));
        model.addExactlyOne(options);
    }

    private List<BoolVar> halves(Opening opening, Task task, IntVar start, Shift shift) {
        Instant rest = shift.at(java.util.Objects.requireNonNull(shift.breakStart()));
        Instant on = shift.at(java.util.Objects.requireNonNull(shift.breakEnd()));
        return List.of(
                option(opening, task, start, shift, minute(shift.startsAt()), minute(rest)),
                option(opening, task, start, shift, minute(on), minute(shift.endsAt())));
    }

    private BoolVar option(Opening opening, Task task, IntVar start, Shift shift, int from, int until) {
        BoolVar here = model.newBoolVar("%s %s %s %d".formatted(task.code(), opening.id(), shift.crew(), from));
        int length = length(opening, task);
        Instant delivered = opening.deliveredOn().atStartOfDay(shift.zone()).toInstant();
        int earliest = task == Task.INSTALL ? Math.max(from, minute(delivered)) : from;
        model.addGreaterOrEqual(start, earliest).onlyEnforceIf(here);
        model.addLessOrEqual(start, until - length).onlyEnforceIf(here);
        byCrew.computeIfAbsent(shift.crew(), crew -> new ArrayList<>())
                .add(model.newOptionalFixedSizeIntervalVar(start, length, here, "at " + here.getName()));
        presences
                .computeIfAbsent(shift.crew(), crew -> new HashMap<>())
                .computeIfAbsent(shift.date(), date -> new ArrayList<>())
                .add(here);
        return here;
    }

    private void order(Opening upper) {
        for (Opening other : folder.openings()) {
            if (!other.facade().equals(upper.facade())) continue;
            if (other.level() == upper.level()) after(upper, other, Task.INSTALL);
            if (other.level() < upper.level()) after(upper, other, Task.CLAD);
        }
    }

    private void after(Opening clad, Opening other, Task first) {
        model.addGreaterOrEqual(
                start(clad, Task.CLAD), LinearExpr.affine(start(other, first), 1, length(other, first)));
    }

    private IntVar start(Opening opening, Task task) {
        return java.util.Objects.requireNonNull(starts.get(new Key(opening, task)));
    }

    private void lateHandover(Facade facade) {
        FacadeId id = facade.id();
        IntVar hours = model.newIntVar(0, horizon, "late " + id);
        Instant due = java.util.Objects.requireNonNull(facade.handoverDue())
                .plusDays(1)
                .atStartOfDay(folder.sites().getFirst().zone())
                .toInstant();
        for (Opening opening : folder.openings())
            if (opening.facade().equals(id))
                model.addGreaterOrEqual(
                        LinearExpr.affine(hours, 60, minute(due) - length(opening, Task.CLAD)),
                        start(opening, Task.CLAD));
        cost.addTerm(hours, 200);
    }

    private void openCourse(Course course) {
        IntVar first = model.newIntVar(0, horizon, "first " + course);
        IntVar hours = model.newIntVar(0, horizon, "open " + course);
        for (Opening opening : folder.openings()) {
            if (!opening.course().equals(course)) continue;
            IntVar start = start(opening, Task.INSTALL);
            model.addLessOrEqual(first, start);
            model.addGreaterOrEqual(
                    LinearExpr.newBuilder().addTerm(hours, 60).add(first),
                    LinearExpr.affine(start, 1, length(opening, Task.INSTALL)));
        }
        cost.addTerm(hours, 5);
    }

    private void crewDay(List<BoolVar> presence) {
        BoolVar out = model.newBoolVar("out");
        presence.forEach(here -> model.addImplication(here, out));
        cost.addTerm(out, 400);
    }
}
