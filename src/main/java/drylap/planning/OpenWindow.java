package drylap.planning;

import drylap.kernel.FacadeId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;

/** A stretch in which a task may be done at a facade; never a statement that work at height is safe. */
public record OpenWindow(FacadeId facade, Task task, TimeWindow when) {}
