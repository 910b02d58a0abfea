package drylap.planning.solver;

import drylap.planning.solver.OrderBounds.Mark;
import drylap.speech.Saying;
import java.util.Comparator;
import java.util.Optional;

/** Says which rule leaves a task no legal place on a day of a crew. */
final class NoPlace {
    private final Standing standing;
    private final WorkTask task;
    private final int notBefore;

    NoPlace(Standing standing, WorkTask task, int notBefore) {
        this.standing = standing;
        this.task = task;
        this.notBefore = notBefore;
    }

    Saying rule(CrewCalendar crew, int day) {
        int limit = crew.limit[day];
        int earliest = standing.readiness.earliest(task);
        if (earliest >= TimeAxis.NEVER) return Saying.of("it waits for work that is not planned");
        if (notBefore + task.minutes > limit) return Saying.of("that time has passed");
        if (earliest + task.minutes > limit) return order(earliest);
        int latest = standing.readiness.latestEnd(task);
        if (Math.max(crew.from[day], earliest) + task.minutes > latest)
            return Saying.of("it must end by {0}", standing.when(task, latest));
        return wallOrRoom(crew, day, Math.max(crew.from[day], Math.max(earliest, notBefore)));
    }

    private Saying wallOrRoom(CrewCalendar crew, int day, int from) {
        int limit = crew.limit[day];
        int at = Math.max(from, 0);
        boolean open = at < limit && task.open.firstFit(at, task.minutes) + task.minutes <= limit;
        if (!open && at < limit)
            return Saying.of(
                    "{0} is not open for {1} min in a row within the shift: {2}",
                    Standing.wall(task), task.minutes, new WallWords(standing.problem).causes(task, at, limit));
        return Saying.of(
                "the shift leaves no room for the road, setting up, the break, {0} min of work and what is pinned",
                task.minutes);
    }

    private Saying order(int earliest) {
        return last().map(Mark::saying)
                .orElseGet(() -> Saying.of("what comes before it is through at {0}", standing.when(task, earliest)));
    }

    /** Nothing of the kind would be first, since it may start no earlier. */
    Saying notSooner(int start) {
        Saying at = Saying.of(
                "it may start at {0} at the earliest, and other work fits in before", standing.when(task, start));
        return last().filter(mark -> mark.at() > 0)
                .map(mark -> Saying.of("{0}: {1}", at, mark.saying()))
                .orElse(at);
    }

    private Optional<Mark> last() {
        return OrderBounds.of(standing, task).stream().max(Comparator.comparingInt(Mark::at));
    }
}
