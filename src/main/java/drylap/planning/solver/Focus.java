package drylap.planning.solver;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a search of a plan that people have already should turn to: the courses on which something is no longer where it was
 * published, or is new. The rest is left alone for the most part, so that a change of weather moves what it touches.
 */
final class Focus {
    private Focus() {}

    /** Units to begin moves with: none where nothing has changed, all where most of it has. */
    static List<Unit> of(CrewLists kept) {
        Schedule schedule = kept.schedule();
        Set<CourseWork> courses = new HashSet<>();
        for (Unit unit : kept.getUnits())
            for (WorkTask task : unit.tasks) if (elsewhere(task, schedule)) courses.add(unit.course);
        List<Unit> near = kept.getUnits().stream()
                .filter(unit -> courses.contains(unit.course))
                .toList();
        return near.size() * 2 > kept.getUnits().size() ? kept.getUnits() : near;
    }

    private static boolean elsewhere(WorkTask task, Schedule schedule) {
        return !task.published()
                || schedule.start[task.index] != task.publishedStart
                || schedule.crew[task.index] != task.publishedCrew;
    }
}
