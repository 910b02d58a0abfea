package drylap.planning.solver;

import drylap.kernel.Task;
import drylap.planning.BoundKind;
import drylap.planning.TaskWords;
import drylap.speech.Part;
import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;

/** What must be through before a task may start, whoever does it, each with its minute. */
final class OrderBounds {
    /** A rule and the minute from which it lets the task start. */
    record Mark(BoundKind kind, int at, Saying saying) {}

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
        add(
                BoundKind.DELIVERY,
                task,
                task.earliest,
                Saying.of("the window is delivered on {0}", new Part.When(task.opening.deliveredOn())));
    }

    private void cure(WorkTask task) {
        int at = standing.readiness.earliest(task);
        int hours = standing.problem.limits(task).cure() / 60;
        add(BoundKind.CURE, task, at, Saying.of("the install has cured for {0} h", hours));
    }

    private void installsAndTests(WorkTask task) {
        through(
                BoundKind.COURSE_INSTALLS,
                task,
                task.course,
                Task.INSTALL,
                Saying.of("the course's last install ends"));
        through(BoundKind.COURSE_TESTS, task, task.course, Task.TEST, Saying.of("the course's last water test ends"));
    }

    private void wrapsOrInstalls(WorkTask task) {
        if (task.course.tasks(Task.WRAP).isEmpty()) installsAndTests(task);
        else through(BoundKind.COURSE_WRAPS, task, task.course, Task.WRAP, Saying.of("the course's last wrap ends"));
    }

    private void below(WorkTask task) {
        CourseWork below = standing.problem.below(task.course, task.kind);
        if (below == null) return;
        Saying words =
                Saying.of("the {0} of level {1} below is through", TaskWords.noun(task.kind), below.course.level());
        through(BoundKind.LEVEL_BELOW, task, below, task.kind, words);
    }

    private void through(BoundKind kind, WorkTask task, CourseWork course, Task what, Saying words) {
        add(kind, task, standing.ends.last(course, what), words);
    }

    /** What no time belongs to does not hold the task up. */
    private void add(BoundKind kind, WorkTask task, int at, Saying words) {
        if (at <= -TimeAxis.NEVER || at >= TimeAxis.NEVER) return;
        marks.add(new Mark(kind, at, Saying.of("{0}, {1}", words, standing.when(task, at))));
    }
}
