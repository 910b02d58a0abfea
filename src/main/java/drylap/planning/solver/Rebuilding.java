package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Draws related units to be rebuilt: neighbours on a wall, or what a crew does in a day, so that the day may be saved. */
final class Rebuilding {
    private static final int MOST_REBUILT = 8;

    private Rebuilding() {}

    static ListMove draw(Lots lots, Function<Unit, ListMove> place) {
        Unit seed = lots.unit();
        boolean wholeDay = lots.random.nextBoolean();
        List<Unit> units = wholeDay ? dayOf(seed, lots.lists.working, lots.lists.focus) : neighbours(seed, lots);
        return Rebuild.of(lots.lists, units, wholeDay ? units.size() : 1, place);
    }

    private static List<Unit> dayOf(Unit seed, Schedule schedule, Focus focus) {
        int day = schedule.day[seed.tasks[0].index];
        return schedule.positions.route(seed).getUnits().stream()
                .filter(unit -> focus.has(unit) && schedule.day[unit.tasks[0].index] == day)
                .limit(MOST_REBUILT)
                .toList();
    }

    private static List<Unit> neighbours(Unit seed, Lots lots) {
        List<Unit> units = new ArrayList<>(List.of(seed));
        int more = 2 + lots.random.nextInt(MOST_REBUILT - 2);
        for (int i = 0; i < more; i++)
            units.add(lots.random.nextInt(3) == 0 ? lots.contemporary(seed) : lots.relative(seed));
        units.removeIf(unit -> !lots.lists.focus.has(unit));
        return units;
    }

    /** What stays out is tried again, with the installs that it waits for brought forward; null where nothing stays out. */
    static @Nullable ListMove ofWhatStaysOut(Lots lots, Function<Unit, ListMove> place) {
        Unit out = leftOut(lots);
        if (out == null) return null;
        boolean hasten = out.kind != Task.INSTALL && lots.random.nextBoolean();
        ListMove hastened = hasten ? Hastening.of(lots, out) : null;
        if (hastened != null) return hastened;
        List<Unit> units = waitedFor(out, lots);
        Collections.shuffle(units, lots.random);
        List<Unit> some = new ArrayList<>(units.subList(0, Math.min(units.size(), MOST_REBUILT)));
        some.add(out);
        return Rebuild.of(lots.lists, some, some.size(), unit -> unit == out ? place.apply(unit) : lots.earlier(unit));
    }

    /** What comes before it on its course or on one of those below, drawn at random. */
    private static List<Unit> waitedFor(Unit out, Lots lots) {
        Problem problem = lots.lists.problem();
        CourseWork course = out.course;
        for (CourseWork below = problem.below(course, out.kind);
                below != null && lots.random.nextBoolean();
                below = problem.below(course, out.kind)) course = below;
        Laps laps = lots.lists.working.laps;
        List<Unit> units = new ArrayList<>();
        for (Task kind : Task.values()) {
            boolean before = kind.compareTo(out.kind) < 0 || kind == out.kind && course != out.course;
            if (before) units.addAll(List.of(laps.on(course, kind)));
        }
        return units;
    }

    private static @Nullable Unit leftOut(Lots lots) {
        List<Unit> units = lots.lists.getUnits();
        int from = lots.random.nextInt(units.size());
        for (int i = 0; i < units.size(); i++) {
            Unit unit = units.get((from + i) % units.size());
            for (WorkTask task : unit.tasks) if (lots.lists.working.start[task.index] == TimeAxis.NEVER) return unit;
        }
        return null;
    }
}
