package drylap.bench;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import drylap.bench.ExactJob.Day;
import drylap.bench.ExactJob.Work;
import drylap.crews.Crew;
import drylap.planning.LedgerTerm;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Each crew's works in a row over all its days, one at a time, with set-up between them; and what sets up. */
final class ExactRoutes {
    private static final int NOWHERE = 0;

    private final ExactModel exact;
    private final ExactJob job;
    private final CpModel model;
    private final List<IntVar> setups = new ArrayList<>();

    ExactRoutes(ExactModel exact) {
        this.exact = exact;
        job = exact.job;
        model = exact.model;
    }

    void state() {
        for (Work work : job.works) {
            int most = work.labour().setupSiteMin()
                    + work.labour().setupFacadeMin()
                    + work.labour().setupLevelMin();
            IntVar setup = model.newIntVar(0, most, "setup " + work.index());
            BoolVar first = exact.firsts.get(work.index());
            model.addEquality(setup, work.labour().setupSiteMin()).onlyEnforceIf(first);
            setups.add(setup);
        }
        job.folder.crews().forEach(this::route);
        exact.costs.addWeightedSum(setups.toArray(IntVar[]::new), weights());
    }

    private long[] weights() {
        return setups.stream().mapToLong(one -> job.weight(LedgerTerm.SETUP)).toArray();
    }

    private void route(Crew crew) {
        List<Work> works =
                job.works.stream().filter(work -> ExactJob.able(work, crew)).toList();
        Map<Work, BoolVar> on = new HashMap<>();
        works.forEach(work -> on.put(work, on(work, crew)));
        oneAtATime(on);
        CircuitConstraint circuit = model.addCircuit();
        BoolVar idle = model.newBoolVar("idle " + crew.id());
        circuit.addArc(NOWHERE, NOWHERE, idle);
        for (int i = 0; i < works.size(); i++) {
            Work work = works.get(i);
            BoolVar here = Objects.requireNonNull(on.get(work));
            model.addImplication(idle, here.not());
            circuit.addArc(i + 1, i + 1, here.not());
            BoolVar begins = model.newBoolVar("begins");
            circuit.addArc(NOWHERE, i + 1, begins);
            circuit.addArc(i + 1, NOWHERE, model.newBoolVar("ends"));
            model.addImplication(begins, exact.firsts.get(work.index()));
            for (int j = 0; j < works.size(); j++) if (i != j) circuit.addArc(i + 1, j + 1, inARow(work, works.get(j)));
        }
    }

    private BoolVar on(Work work, Crew crew) {
        BoolVar on = model.newBoolVar("on");
        List<BoolVar> days = new ArrayList<>();
        exact.places.get(work.index()).forEach((Day day, BoolVar here) -> {
            if (day.crew().equals(crew)) days.add(here);
        });
        model.addEquality(LinearExpr.sum(days.toArray(BoolVar[]::new)), on);
        return on;
    }

    private void oneAtATime(Map<Work, BoolVar> on) {
        List<IntervalVar> intervals = new ArrayList<>();
        on.forEach((work, here) -> intervals.add(model.newOptionalFixedSizeIntervalVar(
                exact.starts.get(work.index()), work.minutes(), here, "work " + work.index())));
        model.addNoOverlap(intervals);
    }

    private BoolVar inARow(Work one, Work next) {
        BoolVar row = model.newBoolVar("row");
        BoolVar first = exact.firsts.get(next.index());
        IntVar date = exact.dates.get(one.index());
        IntVar nextDate = exact.dates.get(next.index());
        int setup = next.setupAfter(one);
        Literal[] sameDay = {row, first.not()};
        model.addGreaterOrEqual(nextDate, LinearExpr.affine(date, 1, 1)).onlyEnforceIf(new Literal[] {row, first});
        model.addEquality(nextDate, date).onlyEnforceIf(sameDay);
        model.addEquality(setups.get(next.index()), setup).onlyEnforceIf(sameDay);
        model.addGreaterOrEqual(
                        exact.starts.get(next.index()),
                        LinearExpr.affine(exact.starts.get(one.index()), 1, one.minutes() + (long) setup))
                .onlyEnforceIf(sameDay);
        return row;
    }
}
