package drylap.planning.solver;

import drylap.planning.solver.OrderBounds.Mark;
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

    String rule(CrewCalendar crew, int day) {
        int limit = crew.limit[day];
        int earliest = standing.readiness.earliest(task);
        if (earliest >= TimeAxis.NEVER) return "it waits for work that is not planned";
        if (notBefore + task.minutes > limit) return "that time has passed";
        if (earliest + task.minutes > limit) return order(earliest);
        int latest = standing.readiness.latestEnd(task);
        if (Math.max(crew.from[day], earliest) + task.minutes > latest)
            return "it must end by " + standing.when(task, latest);
        return wallOrRoom(crew, day, Math.max(crew.from[day], Math.max(earliest, notBefore)));
    }

    private String wallOrRoom(CrewCalendar crew, int day, int from) {
        int limit = crew.limit[day];
        int at = Math.max(from, 0);
        boolean open = at < limit && task.open.firstFit(at, task.minutes) + task.minutes <= limit;
        if (!open && at < limit)
            return "%s is not open for %d min in a row within the shift: %s"
                    .formatted(
                            Standing.wall(task), task.minutes, new WallWords(standing.problem).causes(task, at, limit));
        return "the shift leaves no room for the road, setting up, the break, %d min of work and what is pinned"
                .formatted(task.minutes);
    }

    private String order(int earliest) {
        return last().map(Mark::words).orElse("what comes before it is through at " + standing.when(task, earliest));
    }

    /** Nothing of the kind would be first, since it may start no earlier. */
    String notSooner(int start) {
        String at = "it may start at %s at the earliest, and other work fits in before"
                .formatted(standing.when(task, start));
        return last().filter(mark -> mark.at() > 0)
                .map(mark -> at + ": " + mark.words())
                .orElse(at);
    }

    private Optional<Mark> last() {
        return OrderBounds.of(standing, task).stream().max(Comparator.comparingInt(Mark::at));
    }
}
