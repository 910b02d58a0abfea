package drylap.planning;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.speech.Saying;

/** How sentences name a task. */
public final class TaskWords {
    private TaskWords() {}

    public static Saying noun(Task task) {
        return Saying.of(
                switch (task) {
                    case INSTALL -> "install";
                    case TEST -> "test";
                    case WRAP -> "wrap";
                    case CLAD -> "cladding";
                });
    }

    /** Within a sentence, such as "the install of QW2-01". */
    public static Saying the(Task task, OpeningId opening) {
        return Saying.of(
                switch (task) {
                    case INSTALL -> "the install of {0}";
                    case TEST -> "the test of {0}";
                    case WRAP -> "the wrap of {0}";
                    case CLAD -> "the clad of {0}";
                },
                opening);
    }

    /** Such as "install of QW2-01". */
    public static Saying at(Task task, OpeningId opening) {
        return Saying.of(
                switch (task) {
                    case INSTALL -> "install of {0}";
                    case TEST -> "test of {0}";
                    case WRAP -> "wrap of {0}";
                    case CLAD -> "clad of {0}";
                },
                opening);
    }
}
