package drylap.planning;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;

/** @param detail the reason in words: what it waits for, since when, which limit */
public record UnplannedTask(OpeningId opening, Task task, UnplannedReason reason, String detail) {}
