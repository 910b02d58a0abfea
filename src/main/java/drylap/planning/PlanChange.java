package drylap.planning;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.speech.Saying;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of one task from the published plan to a proposed one.
 *
 * @param before where it stood; absent when it is added
 * @param after where it is to stand; absent when it is dropped
 * @param why what can be computed of the why; empty when the planner found it better so, and nothing forced it
 */
public record PlanChange(@Nullable Visit before, @Nullable Visit after, List<Why> why) {
    /** How a task's place changes. */
    public enum Kind {
        MOVED,
        ADDED,
        DROPPED,
        SAME
    }

    /** What forces a change, or holds a visit where it is. */
    public enum Reason {
        DONE("the task is done by now"),
        TIME_PASSED("its start has passed"),
        NO_SHIFT("its crew does not work then any more"),
        DELIVERY("the window comes later"),
        SHUT("the wall is shut at its old time by now"),
        LEFT_OUT("it could not be placed"),
        PLACED("it had been left out, and has a place now"),
        RETURNED("work at the opening came back: it was not to be done when the published plan was made"),
        FOLLOWS("the work before it ends later"),
        ROOM("to make room"),
        PINNED("pinned, so that it stays");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** @param detail which, where and when, as far as it is known */
    public record Why(Reason reason, @Nullable Saying detail) {
        public Why(Reason reason) {
            this(reason, null);
        }

        /** In English. */
        public String words() {
            return detail == null ? "" : detail.words();
        }
    }

    public PlanChange {
        if (before == null && after == null) throw new IllegalArgumentException("a change of no visit");
        why = List.copyOf(why);
    }

    public Kind kind() {
        if (before == null) return Kind.ADDED;
        if (after == null) return Kind.DROPPED;
        boolean stays = before.crew().equals(after.crew())
                && before.date().equals(after.date())
                && before.start().equals(after.start());
        return stays ? Kind.SAME : Kind.MOVED;
    }

    public OpeningId opening() {
        return either().opening();
    }

    public Task task() {
        return either().task();
    }

    private Visit either() {
        return before != null ? before : Objects.requireNonNull(after);
    }
}
