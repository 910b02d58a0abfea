package drylap.whatif;

import drylap.planning.JobFolder;
import java.util.List;

/** Some changes under a name. */
public record Scenario(String name, List<Change> changes) {
    /** Of the folder as it is. */
    public static final String AS_IT_IS = "as it is";

    public Scenario {
        changes = List.copyOf(changes);
    }

    /**
     * A copy of the folder with all changes made, in their order.
     *
     * @throws IllegalArgumentException where a change speaks of nothing that is there, or no crew has a day left
     */
    public JobFolder applyTo(JobFolder folder) {
        JobFolder changed = folder;
        for (Change change : changes) changed = change.applyTo(changed);
        if (changed.shifts().isEmpty()) throw CannotBe.NOBODY_LEFT.with(name);
        return changed;
    }
}
