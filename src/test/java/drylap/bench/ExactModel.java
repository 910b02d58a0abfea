package drylap.bench;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.util.Domain;
import drylap.bench.ExactJob.Day;
import drylap.bench.ExactJob.Stretch;
import drylap.bench.ExactJob.Work;
import drylap.planning.Visit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The planning contract for one site, written for OR-tools' CP-SAT: each task on one shift of one crew at a minute. Every
 * task has to be planned, which is no loss where a plan without unplanned tasks exists, since those go before everything else.
 */
final class ExactModel {
    final ExactJob job;
    final CpModel model = new CpModel();
    /** By work. */
    final List<IntVar> starts = new ArrayList<>();

    final List<IntVar> dates = new ArrayList<>();
    /** Whether it is the first of its crew that day. */
    final List<BoolVar> firsts = new ArrayList<>();

    final List<Map<Day, BoolVar>> places = new ArrayList<>();
    /** By day of a crew that can be used: whether it is. */
    final List<BoolVar> outs = new ArrayList<>();

    final LinearExprBuilder costs = LinearExpr.newBuilder();

    ExactModel(ExactJob job) {
        this.job = job;
        job.works.forEach(this::place);
        new ExactOrder(this).state();
        new ExactRoutes(this).state();
        new ExactCosts(this).state();
    }

    private void place(Work work) {
        IntVar start = model.newIntVar(0, job.horizon, "start " + work.index());
        IntVar date =
                model.newIntVar(0, job.days.stream().mapToInt(Day::date).max().orElseThrow(), "date");
        Map<Day, BoolVar> options = new HashMap<>();
        starts.add(start);
        dates.add(date);
        firsts.add(model.newBoolVar("first " + work.index()));
        places.add(options);
        for (Day day : job.days) {
            List<Stretch> legal = ExactJob.able(work, day.crew()) ? job.starts(work, day) : List.of();
            if (legal.isEmpty()) continue;
            BoolVar here = model.newBoolVar("here");
            model.addLinearExpressionInDomain(start, domain(legal)).onlyEnforceIf(here);
            model.addEquality(date, day.date()).onlyEnforceIf(here);
            model.addGreaterOrEqual(
                            start, day.from() + day.toSite() + work.labour().setupSiteMin())
                    .onlyEnforceIf(new BoolVar[] {here, firsts.getLast()});
            options.put(day, here);
        }
        model.addExactlyOne(options.values().toArray(BoolVar[]::new));
    }

    static Domain domain(List<Stretch> stretches) {
        return Domain.fromIntervals(stretches.stream()
                .map(one -> new long[] {one.first(), one.last()})
                .toArray(long[][]::new));
    }

    LinearExpr end(Work work) {
        return LinearExpr.affine(starts.get(work.index()), 1, work.minutes());
    }

    /** Only this plan is left, so that the model prices it. */
    void only(List<Visit> plan) {
        for (Work work : job.works) {
            Visit visit = visit(work, plan);
            model.addEquality(starts.get(work.index()), job.minute(visit.start()));
            places.get(work.index()).forEach((day, here) -> model.addEquality(here, isOn(visit, day)));
        }
    }

    /** The search begins at this plan. */
    void beginAt(List<Visit> plan) {
        for (Work work : job.works) {
            Visit visit = visit(work, plan);
            model.addHint(starts.get(work.index()), job.minute(visit.start()));
            places.get(work.index()).forEach((day, here) -> model.addHint(here, isOn(visit, day)));
        }
    }

    private static Visit visit(Work work, List<Visit> plan) {
        return plan.stream()
                .filter(one -> one.opening().equals(work.opening().id()) && one.task() == work.task())
                .findFirst()
                .orElseThrow();
    }

    private static long isOn(Visit visit, Day day) {
        boolean same =
                day.crew().id().equals(visit.crew()) && day.shift().date().equals(visit.date());
        return same ? 1 : 0;
    }
}
