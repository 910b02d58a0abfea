package drylap.planning.solver;

import drylap.kernel.Task;
import org.jspecify.annotations.Nullable;

/** Which units wait for a course's tasks, by number, so that a search finds them at once. */
final class Laps {
    private final Unit[][][] on;
    private final @Nullable CourseWork[][] upper;

    Laps(Problem problem) {
        int courses = problem.courses().size();
        on = new Unit[Task.values().length][courses][];
        upper = new CourseWork[Task.values().length][courses];
        int[][] filled = new int[Task.values().length][courses];
        for (CourseWork course : problem.courses())
            for (Task kind : Task.values()) on[kind.ordinal()][course.index] = new Unit[problem.unitsOf(course, kind)];
        for (Unit unit : problem.units()) {
            int kind = unit.kind.ordinal();
            on[kind][unit.course.index][filled[kind][unit.course.index]++] = unit;
            CourseWork below = problem.below(unit.course, unit.kind);
            if (below != null) upper[kind][below.index] = unit.course;
        }
    }

    Unit[] on(CourseWork course, Task kind) {
        return on[kind.ordinal()][course.index];
    }

    /** The course that laps over this one, if it has units of the kind. */
    @Nullable
    CourseWork upper(CourseWork course, Task kind) {
        return upper[kind.ordinal()][course.index];
    }
}
