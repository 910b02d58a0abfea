package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.planning.BoundKind;
import java.util.ArrayList;
import java.util.List;

/** What must be through before a task may start, whoever does it, each with its minute. */
final class OrderBounds {
    /** A rule and the minute from which it lets the task start. */
    record Mark(BoundKind kind, int at, String words) {}

    private final Standing standing;
    private final List<Mark> marks = new ArrayList<>();

    private OrderBounds(Standing standing) {
        this.standing = standing;
    }

    static List<Mark> of(Standing standing, WorkTask task) {
        OrderBounds bounds = new OrderBounds(standing);
        switch (task.kind) {
            case INSTALL -> bounds.delivery(task);
            case TEST -> bounds.cure(task);
            case WRAP -> bounds.installsAndTests(task);
            case CLAD -> bounds.wrapsOrInstalls(task);
        }
        bounds.below(task);
        return bounds.marks;
    }

    private void delivery(WorkTask task) {
        add(BoundKind.DELIVERY, task, task.earliest, "the window is delivered on " + task.opening.deliveredOn());
    }

    private void cure(WorkTask task) {
        int at = standing.readiness.earliest(task);
        int hours = standing.problem.limits(task).cure() / 60;
        add(BoundKind.CURE, task, at, "the install has cured for %d h".formatted(hours));
    }

    private void installsAndTests(WorkTask task) {
        through(BoundKind.COURSE_INSTALLS, task, task.course, Task.INSTALL, "the course's last install ends");
        through(BoundKind.COURSE_TESTS, task, task.course, Task.TEST, "the course's last water test ends");
    }

    private void wrapsOrInstalls(WorkTask task) {
        if (task.course.tasks(Task.WRAP).isEmpty()) installsAndTests(task);
        else through(BoundKind.COURSE_WRAPS, task, task.course, Task.WRAP, "the course's last wrap ends");
    }

    private void below(WorkTask task) {
        CourseWork below = standing.problem.below(task.course, task.kind);
        if (below == null) return;
        String words = "the %s of level %d below is through".formatted(task.kind.code(), below.course.level());
        through(BoundKind.LEVEL_BELOW, task, below, task.kind, words);
    }

    private void through(BoundKind kind, WorkTask task, CourseWork course, Task what, String words) {
        add(kind, task, standing.ends.last(course, what), words);
    }

    /** What no time belongs to does not hold the task up. */
    private void add(BoundKind kind, WorkTask task, int at, String words) {
        if (at <= -TimeAxis.NEVER || at >= TimeAxis.NEVER) return;
        marks.add(new Mark(kind, at, "%s, %s".formatted(words, standing.when(task, at))));
    }
}
