package drylap.planning.solver;

import drylap.planning.CostDifference;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.LedgerTerm;
import drylap.planning.MoveCost;
import drylap.planning.Plan;
import drylap.planning.Visit;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Holds a visit elsewhere, at the best legal place of a kind, plans the rest again and counts what that costs. */
final class MoveTrials {
    private record Trial(Visit at, Plan plan) {}

    private static final Comparator<Trial> CHEAPEST = Comparator.comparingLong(
                    (Trial trial) -> trial.plan().ledger().medium())
            .thenComparingLong(trial -> soft(trial.plan().ledger()))
            .thenComparing(trial -> trial.at().start());

    private final JobFolder folder;
    private final Replanning again;
    private final Standing standing;
    private final WorkTask task;
    private final NoPlace noPlace;
    private final Ledger before;
    private final int notBefore;

    MoveTrials(JobFolder folder, Replanning again, Standing standing, WorkTask task) {
        this.folder = folder;
        this.again = again;
        this.standing = standing;
        this.task = task;
        before = again.ledger(folder);
        notBefore = standing.problem.axis().ceil(again.from());
        noPlace = new NoPlace(standing, task, notBefore);
    }

    List<MoveCost> all() {
        CrewCalendar crew = standing.crewOf(task);
        int day = standing.day[task.index];
        List<MoveCost> costs = new ArrayList<>();
        costs.add(onDay(Saying.of("one working day earlier"), crew, day - 1));
        costs.add(onDay(Saying.of("one working day later"), crew, day + 1));
        for (CrewCalendar other : standing.able(task))
            if (other != crew)
                costs.add(onDay(Saying.of("to crew {0}", other.crew.id()), other, other.dayOf(crew.dates[day])));
        costs.add(first(crew, day));
        return costs;
    }

    private MoveCost onDay(Saying move, CrewCalendar crew, int day) {
        if (day < 0 || day >= crew.days())
            return new MoveCost.NoPlace(move, Saying.of("crew {0} has no shift then", crew.crew.id()));
        return best(move, crew, day, standing.places(task, crew, day, notBefore));
    }

    private MoveCost best(Saying move, CrewCalendar crew, int day, List<Integer> places) {
        if (places.isEmpty()) return new MoveCost.NoPlace(move, noPlace.rule(crew, day));
        Optional<Visit> best = places.stream()
                .map(start -> visit(crew, day, start))
                .map(at -> new Trial(at, again.decode(folder, at)))
                .filter(trial -> trial.plan().ledger().hard() == 0)
                .min(CHEAPEST)
                .map(Trial::at);
        return best.map(at -> solved(move, at))
                .orElseGet(() -> new MoveCost.NoPlace(
                        move, Saying.of("what comes before or after it could not keep its rules")));
    }

    private MoveCost solved(Saying move, Visit at) {
        Plan plan = again.solve(folder, at);
        return new MoveCost.Possible(move, inPlan(plan, at), plan, CostDifference.of(before, plan.ledger()));
    }

    private MoveCost first(CrewCalendar crew, int day) {
        Saying move = Saying.of("first in line of its day");
        WorkTask stop = standing.before(task);
        if (stop == null || standing.day[stop.index] != day)
            return new MoveCost.NoPlace(move, Saying.of("it is the first already"));
        List<Integer> places = standing.places(task, crew, day, notBefore);
        if (places.isEmpty()) return new MoveCost.NoPlace(move, noPlace.rule(crew, day));
        MoveCost cost = best(move, crew, day, places.subList(0, 1));
        return cost instanceof MoveCost.Possible(var _, Visit to, var _, var _) && to.sequence() > 1
                ? new MoveCost.NoPlace(move, noPlace.notSooner(places.getFirst()))
                : cost;
    }

    private static Visit inPlan(Plan plan, Visit at) {
        return plan.visits().stream()
                .filter(one -> one.opening().equals(at.opening()) && one.task() == at.task())
                .findFirst()
                .orElseThrow();
    }

    private Visit visit(CrewCalendar crew, int day, int start) {
        return new Visit(
                crew.crew.id(),
                crew.dates[day],
                1,
                task.opening.facade(),
                task.opening.level(),
                task.opening.id(),
                task.kind,
                standing.problem.axis().at(start),
                standing.problem.axis().at(start + task.minutes));
    }

    private static long soft(Ledger ledger) {
        return ledger.lines().stream()
                .filter(line -> line.term() != LedgerTerm.CHANGED)
                .mapToLong(Ledger.Line::cost)
                .sum();
    }
}
