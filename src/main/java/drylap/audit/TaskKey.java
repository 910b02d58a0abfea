package drylap.audit;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.Visit;

/** One task at one opening. */
record TaskKey(OpeningId opening, Task task) {
    static TaskKey of(Visit visit) {
        return new TaskKey(visit.opening(), visit.task());
    }

    @Override
    public String toString() {
        return task.code() + " of " + opening;
    }
}
