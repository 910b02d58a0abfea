package drylap.planning.solver;

import drylap.kernel.FacadeId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A task and where a plan has it: the fact that the constraint streams speak of. All times are minutes of the axis.
 *
 * @param when null while the task is unplanned
 */
public record Stop(What what, @Nullable When when) {
    /**
     * What no plan changes.
     *
     * @param below the next lower level that must be through first, 0 for none
     * @param due the end of the facade's due date, NEVER without one
     * @param earliest delivery of the window; the cure of an install that was complete before the plan
     * @param latestEnd for a wrap: the limits that installs set which were complete before the plan
     */
    public record What(
            OpeningId opening,
            Task task,
            FacadeId facade,
            int level,
            int below,
            int minutes,
            int priority,
            boolean barrierFirst,
            int due,
            int horizonEnd,
            int earliest,
            int latestEnd,
            int coverBy,
            Problem.Limits limits,
            @Nullable Before before) {}

    /** Where the published plan has the task. */
    public record Before(int crew, LocalDate date, boolean pinned, int start) {}

    /**
     * Where this plan has it.
     *
     * @param free when the crew was free for it: the end of its previous task that day, or its shift's start
     * @param wayBack minutes to the base after the day's last stop, else 0
     * @param able whether the crew is of the task's trade and trained for the opening's method
     * @param open whether every minute is open for the task at the facade
     * @param rain thousandths of chance of rain while an install is open
     */
    public record When(
            int crew,
            LocalDate date,
            int start,
            int free,
            int travel,
            int setup,
            boolean lastOfDay,
            int wayBack,
            Shift shift,
            boolean able,
            boolean open,
            int rain) {}

    /** The crew's shift that day; without a break {@code breakFrom} is NEVER. */
    public record Shift(int end, int limit, int breakFrom, int breakUntil) {}

    public boolean planned() {
        return when != null;
    }

    /** For planned stops only. */
    public When where() {
        if (when == null) throw new IllegalStateException(what.opening() + " is not planned");
        return when;
    }

    public int start() {
        return where().start();
    }

    public int end() {
        return where().start() + what.minutes();
    }

    public Task task() {
        return what.task();
    }

    public FacadeId facade() {
        return what.facade();
    }

    public int level() {
        return what.level();
    }

    public OpeningId opening() {
        return what.opening();
    }

    public int crew() {
        return where().crew();
    }

    public LocalDate date() {
        return where().date();
    }

    boolean is(Task kind) {
        return what.task() == kind;
    }

    /** Not through by the minute, or not planned at all. */
    boolean unfinishedAt(int minute) {
        return !planned() || end() > minute;
    }
}
