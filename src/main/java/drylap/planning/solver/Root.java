package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds the task at the beginning of a chain of unplanned tasks that wait for each other. */
final class Root {
    private Root() {}

    static WorkTask of(Standing standing, WorkTask task) {
        WorkTask root = task;
        for (WorkTask first = missing(standing, root); first != null; first = missing(standing, root)) root = first;
        return root;
    }

    private static @Nullable WorkTask missing(Standing standing, WorkTask task) {
        return goesBefore(standing, task)
                .filter(other -> standing.start[other.index] == TimeAxis.NEVER)
                .findFirst()
                .orElse(null);
    }

    private static Stream<WorkTask> goesBefore(Standing standing, WorkTask task) {
        CourseWork below = standing.problem.below(task.course, task.kind);
        Stream<WorkTask> lower = below == null ? Stream.of() : below.tasks(task.kind).stream();
        return switch (task.kind) {
            case INSTALL -> Stream.of();
            case TEST -> Stream.ofNullable(task.install);
            case WRAP -> Stream.concat(on(task, List.of(Task.INSTALL, Task.TEST)), lower);
            case CLAD -> Stream.concat(on(task, List.of(Task.INSTALL, Task.TEST, Task.WRAP)), lower);
        };
    }

    private static Stream<WorkTask> on(WorkTask task, List<Task> kinds) {
        return Arrays.stream(Task.values()).filter(kinds::contains).flatMap(kind -> task.course.tasks(kind).stream());
    }
}
