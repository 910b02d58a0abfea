package drylap.bench;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import drylap.bench.ExactJob.Day;
import drylap.bench.ExactJob.Stretch;
import drylap.bench.ExactJob.Work;
import drylap.kernel.Course;
import drylap.kernel.Task;
import drylap.planning.LedgerTerm;
import drylap.sites.Facade;
import drylap.sites.Opening;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The ledger's terms but for set-up, which goes with the routes, and changes, of which there are none without a published plan. */
final class ExactCosts {
    private static final int HOUR = 60;

    private final ExactModel exact;
    private final ExactJob job;
    private final CpModel model;
    private final LinearExprBuilder costs;

    ExactCosts(ExactModel exact) {
        this.exact = exact;
        job = exact.job;
        model = exact.model;
        costs = exact.costs;
    }

    void state() {
        job.days.forEach(this::crewDay);
        model.addEquality(
                LinearExpr.sum(exact.outs.toArray(BoolVar[]::new)),
                LinearExpr.sum(exact.firsts.toArray(BoolVar[]::new)));
        job.folder.facades().forEach(this::lateHandover);
        job.folder.openings().stream().map(Opening::course).distinct().forEach(this::openCourse);
        job.works.stream().filter(work -> work.task() == Task.INSTALL).forEach(this::rain);
        model.minimize(costs);
    }

    private void crewDay(Day day) {
        List<BoolVar> all = new ArrayList<>();
        LinearExprBuilder minutes = LinearExpr.newBuilder();
        IntVar overtime = model.newIntVar(0, day.limit() - day.end(), "overtime");
        for (Work work : job.works) {
            BoolVar here = exact.places.get(work.index()).get(day);
            if (here == null) continue;
            all.add(here);
            minutes.addTerm(here, work.minutes());
            model.addGreaterOrEqual(LinearExpr.affine(overtime, 1, day.end() - day.fromSite()), exact.end(work))
                    .onlyEnforceIf(here);
        }
        if (all.isEmpty()) return;
        BoolVar out = model.newBoolVar("out");
        exact.outs.add(out);
        model.addMaxEquality(out, all.toArray(BoolVar[]::new));
        // follows from the rest, and helps the solver to a bound
        model.addLessOrEqual(minutes, LinearExpr.term(out, day.limit() - day.from() - day.toSite() - day.fromSite()));
        int road = day.toSite() + day.fromSite();
        costs.addTerm(out, job.weight(LedgerTerm.CREW_DAYS) + (long) road * job.weight(LedgerTerm.TRAVEL));
        costs.addTerm(overtime, job.weight(LedgerTerm.OVERTIME));
    }

    private void lateHandover(Facade facade) {
        LocalDate due = facade.handoverDue();
        if (due == null) return;
        int by = job.minute(due.plusDays(1)
                .atStartOfDay(job.folder.sites().getFirst().zone())
                .toInstant());
        IntVar hours = model.newIntVar(0, job.horizon, "late");
        for (Work work : job.works)
            if (work.task() == Task.CLAD && work.opening().facade().equals(facade.id()))
                model.addGreaterOrEqual(LinearExpr.affine(hours, HOUR, by), exact.end(work));
        costs.addTerm(hours, job.weight(LedgerTerm.LATE_HANDOVER));
    }

    private void openCourse(Course course) {
        IntVar first = model.newIntVar(0, job.horizon, "first");
        IntVar hours = model.newIntVar(0, job.horizon, "open");
        for (Work work : job.works) {
            if (work.task() != Task.INSTALL || !work.opening().course().equals(course)) continue;
            model.addLessOrEqual(first, exact.starts.get(work.index()));
            model.addGreaterOrEqual(LinearExpr.newBuilder().addTerm(hours, HOUR).add(first), exact.end(work));
        }
        costs.addTerm(hours, job.weight(LedgerTerm.OPEN_COURSE));
    }

    /** One choice among the chances of rain that a start in open hours can have. */
    private void rain(Work install) {
        Map<Integer, List<Stretch>> starts = new TreeMap<>();
        for (Stretch open : job.open(install))
            for (int minute = open.first(); minute <= open.last(); minute++)
                starts.computeIfAbsent(job.rain(install, minute), chance -> new ArrayList<>())
                        .add(new Stretch(minute, minute));
        List<BoolVar> choices = new ArrayList<>();
        starts.forEach((chance, minutes) -> {
            BoolVar choice = model.newBoolVar("rain " + chance);
            model.addLinearExpressionInDomain(exact.starts.get(install.index()), ExactModel.domain(minutes))
                    .onlyEnforceIf(choice);
            costs.addTerm(choice, (long) chance * job.weight(LedgerTerm.RAIN_RISK));
            choices.add(choice);
        });
        model.addExactlyOne(choices.toArray(BoolVar[]::new));
    }
}
