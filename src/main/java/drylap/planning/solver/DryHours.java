package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The driest starts of installs, remembered: a search asks for the same again and again. Installs that take as long at the same wall have them
 * in common, and so have crews whose shifts are the same. Says what {@link DryStart} says.
 */
final class DryHours {
    private static final int HOUR = 60;

    /** By task, which installs are alike; 0 for what is none. */
    private final int[] likes;
    /** By crew and day, which shifts are alike. */
    private final int[][] shapes;

    private final @Nullable Day[][] known;

    private record Like(OpenTimes open, RainOdds odds, int minutes) {}

    private record Shape(int from, int limit, int breakFrom, int breakUntil) {}

    /**
     * @param begins the first minute
     * @param first the first minute at which an hour begins
     * @param whole the driest of all
     * @param rest the driest from each hour on
     */
    private record Day(int begins, int first, DryMoment whole, DryMoment[] rest) {}

    DryHours(List<WorkTask> tasks, List<CrewCalendar> crews) {
        Map<Like, Integer> alike = new HashMap<>();
        likes = new int[tasks.size()];
        for (WorkTask task : tasks)
            if (task.kind == Task.INSTALL)
                likes[task.index] = number(alike, new Like(task.open, task.odds, task.minutes));
        Map<Shape, Integer> shifts = new HashMap<>();
        shapes = new int[crews.size()][];
        for (CrewCalendar crew : crews) {
            shapes[crew.index] = new int[crew.days()];
            for (int day = 0; day < crew.days(); day++) shapes[crew.index][day] = number(shifts, shape(crew, day));
        }
        known = new Day[alike.size()][shifts.size()];
    }

    private static Shape shape(CrewCalendar crew, int day) {
        return new Shape(crew.from[day], crew.limit[day], crew.breakFrom[day], crew.breakUntil[day]);
    }

    private static <T> int number(Map<T, Integer> numbers, T of) {
        Integer next = numbers.size();
        Integer before = numbers.putIfAbsent(of, next);
        return before == null ? next : before;
    }

    /** The driest start in the rest of a crew's day from a minute on, the earliest of equals. */
    DryMoment from(int minute, WorkTask install, CrewCalendar crew, int day) {
        Day of = day(install, crew, day);
        if (minute == of.begins) return of.whole;
        int risk = DryStart.risk(install, crew, day, minute);
        int hour = Math.ceilDiv(minute - of.first, HOUR);
        return hour < of.rest.length && of.rest[hour].risk() < risk ? of.rest[hour] : new DryMoment(minute, risk);
    }

    private Day day(WorkTask install, CrewCalendar crew, int day) {
        Day[] days = known[likes[install.index]];
        int shape = shapes[crew.index][day];
        Day of = days[shape];
        if (of == null) {
            of = reckon(install, crew, day);
            days[shape] = of; // two lanes may reckon the same
        }
        return of;
    }

    private static Day reckon(WorkTask install, CrewCalendar crew, int day) {
        int begins = Math.max(0, crew.from[day]);
        int first = install.odds.hourFrom(begins);
        DryMoment[] rest = new DryMoment[Math.max(0, Math.ceilDiv(crew.limit[day] - first, HOUR))];
        DryMoment driest = null;
        for (int hour = rest.length - 1; hour >= 0; hour--) {
            driest = drier(first + hour * HOUR, driest, install, crew, day);
            rest[hour] = driest;
        }
        return new Day(begins, first, drier(begins, driest, install, crew, day), rest);
    }

    private static DryMoment drier(
            int minute, @Nullable DryMoment later, WorkTask install, CrewCalendar crew, int day) {
        int risk = DryStart.risk(install, crew, day, minute);
        return later != null && later.risk() < risk ? later : new DryMoment(minute, risk);
    }
}
