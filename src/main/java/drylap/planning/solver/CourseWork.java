package drylap.planning.solver;

import drylap.kernel.Course;
import drylap.kernel.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What there is to do on one course, and which lower courses it laps over. */
final class CourseWork {
    final int index;
    final Course course;
    final FacadeWork facade;
    /** The next lower level of the facade that has wrap tasks. */
    @Nullable
    CourseWork wrapsAbove;
    /** The next lower level of the facade. */
    @Nullable
    CourseWork cladsAbove;
    /** Ends of installs that were complete before this plan. */
    int firstInstalledEnd = TimeAxis.NEVER;

    int lastInstalledEnd = -TimeAxis.NEVER;
    private final List<List<WorkTask>> tasks = Stream.generate(() -> (List<WorkTask>) new ArrayList<WorkTask>())
            .limit(Task.values().length)
            .toList();

    CourseWork(int index, Course course, FacadeWork facade) {
        this.index = index;
        this.course = course;
        this.facade = facade;
    }

    List<WorkTask> tasks(Task kind) {
        return tasks.get(kind.ordinal());
    }

    /** An opening whose install was complete at {@code minute}. */
    void installedAt(int minute) {
        firstInstalledEnd = Math.min(firstInstalledEnd, minute);
        lastInstalledEnd = Math.max(lastInstalledEnd, minute);
    }
}
