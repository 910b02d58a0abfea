package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.planning.CoverNow;
import drylap.planning.Plan;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolutionUpdatePolicy;

/** Translates finished crew lists into the plan that leaves the planner. */
final class PlanMaker {
    private final CrewLists lists;
    private final Problem problem;
    private final Schedule schedule;
    private int sequence;

    PlanMaker(CrewLists lists) {
        this.lists = lists;
        problem = lists.problem();
        schedule = lists.schedule();
    }

    Plan plan() {
        return new Plan(
                problem.axis().zero(),
                problem.axis().at(problem.horizonEnd()),
                visits(),
                unplanned(),
                coverNow(),
                problem.openWindows(),
                schedule.tally.ledger(brokenRules()));
    }

    /** The streams state the contract apart from the decoder; what they find broken is counted, not hidden. */
    private long brokenRules() {
        if (problem.tasks().isEmpty()) return 0;
        HardMediumSoftLongScore score = SolutionManager.<CrewLists, HardMediumSoftLongScore>create(Search.judging())
                .update(lists, SolutionUpdatePolicy.UPDATE_SCORE_ONLY);
        return -score.hardScore();
    }

    private List<Visit> visits() {
        List<Visit> visits = new ArrayList<>();
        CrewWalk walk = new CrewWalk(problem, schedule);
        List<CrewCalendar> byName = problem.crews().stream()
                .sorted(Comparator.comparing(crew -> crew.crew.id()))
                .toList();
        for (CrewCalendar crew : byName) {
            sequence = 0;
            walk.walk(crew, schedule.units(crew), (task, travel, setup, last, back) -> {
                visits.add(visit(crew, task, ++sequence));
                if (last) sequence = 0;
            });
        }
        return visits;
    }

    private Visit visit(CrewCalendar crew, WorkTask task, int sequence) {
        int start = schedule.start[task.index];
        return new Visit(
                crew.crew.id(),
                crew.dates[schedule.day[task.index]],
                sequence,
                task.opening.facade(),
                task.opening.level(),
                task.opening.id(),
                task.kind,
                problem.axis().at(start),
                problem.axis().at(start + task.minutes));
    }

    private List<UnplannedTask> unplanned() {
        Reasons reasons = new Reasons(problem, schedule);
        return problem.tasks().stream()
                .filter(task -> schedule.start[task.index] == TimeAxis.NEVER)
                .map(reasons::of)
                .toList();
    }

    private List<CoverNow> coverNow() {
        return problem.tasks().stream()
                .filter(task -> task.kind == Task.INSTALL && task.coverBy != TimeAxis.NEVER)
                .filter(task -> schedule.start[task.index] + task.minutes > task.coverBy)
                .sorted(Comparator.comparingInt((WorkTask task) -> task.coverBy).thenComparing(t -> t.opening.id()))
                .map(task -> new CoverNow(
                        task.opening.id(), task.opening.doneAt(), problem.axis().at(task.coverBy), task.minutes))
                .toList();
    }
}
