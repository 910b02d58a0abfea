package drylap.audit;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.TaskWords;
import drylap.planning.Visit;
import drylap.speech.Saying;

/** One task at one opening. */
record TaskKey(OpeningId opening, Task task) {
    static TaskKey of(Visit visit) {
        return new TaskKey(visit.opening(), visit.task());
    }

    Saying saying() {
        return TaskWords.at(task, opening);
    }

    @Override
    public String toString() {
        return task.code() + " of " + opening;
    }
}
