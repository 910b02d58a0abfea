package drylap.planning.solver;

import drylap.kernel.Task;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Neighbouring openings of one course for one task kind, done in this order by one crew; each is placed by itself. */
public final class Unit {
    final int index;
    final Task kind;
    final CourseWork course;
    final WorkTask[] tasks;
    /** Numbers of the crews that may do it, in order. */
    final int[] able;

    private final BitSet crews;

    Unit(int index, List<WorkTask> tasks, BitSet crews) {
        this.index = index;
        this.tasks = tasks.toArray(WorkTask[]::new);
        this.kind = this.tasks[0].kind;
        this.course = this.tasks[0].course;
        this.crews = crews;
        able = crews.stream().toArray();
    }

    boolean fits(CrewCalendar crew) {
        return crews.get(crew.index);
    }

    /** Its first task that the published plan has. */
    @Nullable
    WorkTask firstPublished() {
        for (WorkTask task : tasks) if (task.published()) return task;
        return null;
    }

    /** Of its tasks together, without ways between them. */
    int minutes() {
        int minutes = 0;
        for (WorkTask task : tasks) minutes += task.minutes;
        return minutes;
    }

    /** Whether a unit of another problem over the same openings is of the same tasks. */
    boolean sameWork(Unit other) {
        if (kind != other.kind || tasks.length != other.tasks.length) return false;
        for (int i = 0; i < tasks.length; i++)
            if (!tasks[i].opening.id().equals(other.tasks[i].opening.id())) return false;
        return true;
    }

    @Override
    public String toString() {
        return kind.code() + " " + tasks[0].opening.id() + (tasks.length > 1 ? "+" + (tasks.length - 1) : "");
    }
}
