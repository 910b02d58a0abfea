package drylap.planning.solver;

import drylap.planning.Bound;
import drylap.planning.BoundKind;
import drylap.planning.solver.OrderBounds.Mark;
import drylap.speech.Part;
import drylap.speech.Saying;
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
        add(BoundKind.PLAN_START, 0, Saying.of("the plan starts at {0}", when(0)));
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
        return new Bound(mark.kind(), standing.problem.axis().at(mark.at()), binds, mark.saying());
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
                then(Saying.of("crew {0} starts at {1}", crew.crew.id(), when(crew.from[day])), road, setup));
        dayBefore(before);
    }

    private void afterStop(WorkTask before) {
        int road = standing.problem.travel()[before.site][task.site];
        int setup = task.setupAfter(before);
        add(
                before.pinned ? BoundKind.PINNED_BEFORE : BoundKind.STOP_BEFORE,
                standing.end(before) + road + setup,
                then(ends(before), road, setup));
    }

    private Saying ends(WorkTask before) {
        return Saying.of(
                before.pinned ? "crew {0} ends {1}, which is pinned, at {2}" : "crew {0} ends {1} at {2}",
                crew.crew.id(),
                Standing.name(before),
                when(standing.end(before)));
    }

    private static Saying then(Saying first, int road, int setup) {
        List<Saying> all = new ArrayList<>(List.of(first));
        if (road != 0) all.add(Saying.of("{0} min on the road", road));
        if (setup != 0) all.add(Saying.of("{0} min of setting up", setup));
        return Saying.list(", ", all);
    }

    /** Whether the crew could have done it on its day before, after its last stop there. */
    private void dayBefore(@Nullable WorkTask before) {
        int from = before == null ? 0 : standing.day[before.index];
        if (from == day) return;
        int clock = before == null ? 0 : standing.end(before);
        int earliest = standing.readiness.earliest(task);
        boolean sooner = standing.finder.find(crew, from, clock, before, task, earliest, TimeAxis.NEVER)
                && standing.finder.day < day;
        if (sooner) add(BoundKind.CHOICE, start, byChoice(standing.finder.start));
        else if (crew.limit[day - 1] >= Math.max(earliest, 0) + task.minutes)
            add(
                    BoundKind.DAY_BEFORE_FULL,
                    crew.limit[day - 1],
                    Saying.of(
                            "the crew has no room for {0} min on {1}",
                            task.minutes, new Part.When(crew.dates[day - 1])));
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
        Saying causes = new WallWords(standing.problem).causes(task, from, until);
        boolean tooShort = task.open.open(from, from + 1);
        Saying words = tooShort
                ? Saying.of(
                        "{0} is not open for {1} min in a row before {2}: {3}",
                        Standing.wall(task), task.minutes, when(until), causes)
                : Saying.of("{0} is shut until {1}: {2}", Standing.wall(task), when(until), causes);
        add(BoundKind.WALL_SHUT, until, words);
    }

    private void rest() {
        int until = crew.breakUntil[day];
        add(BoundKind.BREAK, until, Saying.of("the crew's break lasts until {0}", when(until)));
    }

    private void chosen(int at) {
        boolean said = marks.stream().anyMatch(mark -> mark.kind() == BoundKind.CHOICE);
        if (!said) add(BoundKind.CHOICE, start, byChoice(at));
    }

    private Saying byChoice(int sooner) {
        return Saying.of("it could start at {0}, and waits by the planner's choice", when(sooner));
    }

    private void behind(@Nullable WorkTask after) {
        if (after == null || !after.pinned || standing.day[after.index] != day) return;
        int at = standing.start[after.index];
        int end = at - after.setupAfter(task) - standing.problem.travel()[task.site][after.site];
        add(
                BoundKind.PINNED_BEHIND,
                end - task.minutes,
                Saying.of(
                        "{0} is pinned behind it at {1}, so it must end by {2}",
                        Standing.name(after), when(at), when(end)));
    }

    private void add(BoundKind kind, int at, Saying words) {
        marks.add(new Mark(kind, at, words));
    }

    private Part when(int minute) {
        return standing.when(task, minute);
    }
}
