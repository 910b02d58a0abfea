package drylap.planning.solver;

import drylap.kernel.TimeWindow;
import drylap.planning.JobFolder;
import drylap.speech.Saying;
import drylap.weather.Forecast;
import drylap.weather.ShutCause;
import drylap.weather.ShutCauses;
import java.util.Set;

/** Says what shuts a wall between two minutes. */
final class WallWords {
    private final Problem problem;

    WallWords(Problem problem) {
        this.problem = problem;
    }

    Saying causes(WorkTask task, int from, int until) {
        TimeWindow stretch =
                new TimeWindow(problem.axis().at(from), problem.axis().at(until));
        Set<ShutCause> causes = causes(task, stretch);
        return Saying.list(
                ", ", causes.stream().map(cause -> Saying.of(cause.words())).toList());
    }

    private Set<ShutCause> causes(WorkTask task, TimeWindow stretch) {
        JobFolder folder = problem.folder();
        var site = problem.sites().get(task.site);
        Forecast forecast = folder.forecast(site.id());
        var rules = folder.rules().at(site.id());
        return ShutCauses.of(site, task.course.facade.facade, forecast, rules, stretch)
                .within(task.kind, stretch);
    }
}
