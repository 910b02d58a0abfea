package drylap.planning.solver;

import drylap.planning.Bound;
import drylap.planning.BoundKind;
import drylap.planning.solver.OrderBounds.Mark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Walks from what a visit's start waits for to where it starts, and notes every rule on the way. */
final class StartReasons {
    private final Standing standing;
    private final WorkTask task;
    private final CrewCalendar crew;
    private final int day;
    private final int start;
    private final List<Mark> marks = new ArrayList<>();

    private StartReasons(Standing standing, WorkTask task) {
        this.standing = standing;
        this.task = task;
        crew = standing.crewOf(task);
        day = standing.day[task.index];
        start = standing.start[task.index];
    }

    static List<Bound> of(Standing standing, WorkTask task) {
        return new StartReasons(standing, task).all();
    }

    private List<Bound> all() {
        add(BoundKind.PLAN_START, 0, "the plan starts at " + when(0));
        marks.addAll(OrderBounds.of(standing, task));
        crewIsThere(standing.before(task));
        openAndNoBreak(marks.stream().mapToInt(Mark::at).max().orElse(0));
        behind(standing.after(task));
        return marks.stream()
                .sorted(Comparator.comparingInt(Mark::at).thenComparing(Mark::kind))
                .map(this::bound)
                .toList();
    }

    private Bound bound(Mark mark) {
        boolean binds = mark.at() == start && mark.kind() != BoundKind.PINNED_BEHIND;
        return new Bound(mark.kind(), standing.problem.axis().at(mark.at()), binds, mark.words());
    }

    private void crewIsThere(@Nullable WorkTask before) {
        if (before != null && standing.day[before.index] == day) {
            afterStop(before);
            return;
        }
        int road = crew.toSite[task.site];
        int setup = task.setupAfter(null);
        add(
                BoundKind.SHIFT_START,
                crew.from[day] + road + setup,
                "crew %s starts at %s%s".formatted(crew.crew.id(), when(crew.from[day]), then(road, setup)));
        dayBefore(before);
    }

    private void afterStop(WorkTask before) {
        int road = standing.problem.travel()[before.site][task.site];
        int setup = task.setupAfter(before);
        add(
                before.pinned ? BoundKind.PINNED_BEFORE : BoundKind.STOP_BEFORE,
                standing.end(before) + road + setup,
                "crew %s ends %s%s at %s%s"
                        .formatted(
                                crew.crew.id(),
                                Standing.name(before),
                                before.pinned ? ", which is pinned," : "",
                                when(standing.end(before)),
                                then(road, setup)));
    }

    private static String then(int road, int setup) {
        return (road == 0 ? "" : ", %d min on the road".formatted(road))
                + (setup == 0 ? "" : ", %d min of setting up".formatted(setup));
    }

    /** Whether the crew could have done it on its day before, after its last stop there. */
    private void dayBefore(@Nullable WorkTask before) {
        int from = before == null ? 0 : standing.day[before.index];
        if (from == day) return;
        int clock = before == null ? 0 : standing.end(before);
        int earliest = standing.readiness.earliest(task);
        boolean sooner = standing.finder.find(crew, from, clock, before, task, earliest, TimeAxis.NEVER)
                && standing.finder.day < day;
        if (sooner)
            add(
                    BoundKind.CHOICE,
                    start,
                    "it could start at %s, and waits by the planner's choice".formatted(when(standing.finder.start)));
        else if (crew.limit[day - 1] >= Math.max(earliest, 0) + task.minutes)
            add(
                    BoundKind.DAY_BEFORE_FULL,
                    crew.limit[day - 1],
                    "the crew has no room for %d min on %s".formatted(task.minutes, crew.dates[day - 1]));
    }

    private void openAndNoBreak(int from) {
        int at = Math.max(from, 0);
        while (at < start) {
            int open = task.open.firstFit(at, task.minutes);
            if (open > start) return;
            if (open > at) shut(at, open);
            else if (at < crew.breakUntil[day] && at + task.minutes > crew.breakFrom[day]) rest();
            else {
                chosen(at);
                return;
            }
            at = Math.max(open, marks.getLast().at());
        }
    }

    private void shut(int from, int until) {
        String causes = new WallWords(standing.problem).causes(task, from, until);
        boolean tooShort = task.open.open(from, from + 1);
        String words = tooShort
                ? "%s is not open for %d min in a row before %s: %s"
                        .formatted(Standing.wall(task), task.minutes, when(until), causes)
                : "%s is shut until %s: %s".formatted(Standing.wall(task), when(until), causes);
        add(BoundKind.WALL_SHUT, until, words);
    }

    private void rest() {
        int until = crew.breakUntil[day];
        add(BoundKind.BREAK, until, "the crew's break lasts until " + when(until));
    }

    private void chosen(int at) {
        boolean said = marks.stream().anyMatch(mark -> mark.kind() == BoundKind.CHOICE);
        if (!said)
            add(BoundKind.CHOICE, start, "it could start at %s, and waits by the planner's choice".formatted(when(at)));
    }

    private void behind(@Nullable WorkTask after) {
        if (after == null || !after.pinned || standing.day[after.index] != day) return;
        int at = standing.start[after.index];
        int end = at - after.setupAfter(task) - standing.problem.travel()[task.site][after.site];
        add(
                BoundKind.PINNED_BEHIND,
                end - task.minutes,
                "%s is pinned behind it at %s, so it must end by %s"
                        .formatted(Standing.name(after), when(at), when(end)));
    }

    private void add(BoundKind kind, int at, String words) {
        marks.add(new Mark(kind, at, words));
    }

    private String when(int minute) {
        return standing.when(task, minute);
    }
}
