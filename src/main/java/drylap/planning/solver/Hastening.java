package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Brings forward, in one move, everything that is too late for what has no place: one alone would not help, and each alone
 * only costs.
 */
final class Hastening {
    private static final int MOST = 80;
    private static final int DAY = 1440;

    private final CrewLists lists;
    private final Problem problem;
    private final Schedule schedule;
    private final Lots lots;
    /** What has to be through by when, those first that others wait for. */
    private final List<Unit> late = new ArrayList<>();

    private final Map<Unit, Integer> by = new HashMap<>();

    private Hastening(Lots lots) {
        this.lots = lots;
        lists = lots.lists;
        problem = lists.problem();
        schedule = lists.working;
    }

    /** @return null where nothing that it waits for is late */
    static @Nullable ListMove of(Lots lots, Unit out) {
        return new Hastening(lots).of(out);
    }

    private @Nullable ListMove of(Unit out) {
        int limit = out.kind == Task.TEST ? lots.random.nextInt(problem.horizonEnd()) : problem.horizonEnd();
        for (WorkTask task : out.tasks) limit = Math.min(limit, schedule.readiness.latestEnd(task));
        if (out.kind == Task.TEST) lookAtInstalls(out, limit);
        else look(out, limit);
        if (late.isEmpty() || late.size() > MOST) return null;
        late.add(out);
        by.put(out, limit);
        return Rebuild.of(lists, late, late.size(), this::before, this::lateness);
    }

    /** From the lowest course up: installs, tests, and the laps below. */
    private void look(Unit out, int limit) {
        List<CourseWork> up = new ArrayList<>();
        for (CourseWork course = out.course; course != null; course = problem.below(course, out.kind))
            up.addFirst(course);
        for (CourseWork course : up) {
            int levels = up.size() - 1 - up.indexOf(course);
            int end = limit - (course == out.course ? out.minutes() : levels * DAY / 4);
            boolean tested = !course.tasks(Task.TEST).isEmpty();
            int cure = tested ? problem.limitsOfSites().get(course.facade.site).cure() + DAY / 4 : 0;
            note(course, Task.INSTALL, end - cure);
            noteTests(course, end);
            if (out.kind == Task.CLAD) note(course, Task.WRAP, end);
            if (course != out.course) note(course, out.kind, end);
        }
    }

    /** Testers come on few days: a test that is too late may need its installs to be through before one of the days until then. */
    private void noteTests(CourseWork course, int end) {
        for (Unit test : schedule.laps.on(course, Task.TEST)) {
            if (endOf(test) <= end) continue;
            if (lots.random.nextBoolean()) lookAtInstalls(test, lots.random.nextInt(Math.max(1, end)));
            note(test, end);
        }
    }

    private void lookAtInstalls(Unit out, int limit) {
        int end = limit - problem.limitsOfSites().get(out.course.facade.site).cure() - out.minutes();
        for (Unit unit : schedule.laps.on(out.course, Task.INSTALL))
            if (Arrays.stream(out.tasks)
                    .anyMatch(test -> Arrays.asList(unit.tasks).contains(test.install))) note(unit, end);
    }

    private void note(CourseWork course, Task kind, int end) {
        for (Unit unit : schedule.laps.on(course, kind)) note(unit, end);
    }

    private void note(Unit unit, int end) {
        if (endOf(unit) <= end) return;
        if (by.put(unit, end) == null) late.add(unit);
    }

    private int endOf(Unit unit) {
        int end = 0;
        for (WorkTask task : unit.tasks)
            end = Math.max(
                    end,
                    schedule.start[task.index] == TimeAxis.NEVER
                            ? TimeAxis.NEVER
                            : schedule.start[task.index] + task.minutes);
        return end;
    }

    /** Some place of some crew in time. */
    private ListMove before(Unit unit) {
        Random random = lots.random;
        int latest = aim(unit) - unit.minutes();
        int ready = schedule.readiness.earliest(unit.tasks[0]);
        int from = Math.max(0, ready == TimeAxis.NEVER ? 0 : ready);
        int at = latest <= from ? from : from + random.nextInt(latest - from);
        Route to = lots.someRoute(unit);
        return lots.run(unit, 1, to, schedule.placeAt(to, at)).waitingUntil(0);
    }

    private long lateness(Unit unit) {
        return Math.max(0, endOf(unit) - aim(unit));
    }

    private int aim(Unit unit) {
        return Objects.requireNonNull(by.get(unit));
    }
}
