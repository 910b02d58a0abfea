package drylap.weather;

import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * When the weather and the light leave a facade open for a task. An open hour says nothing about whether work at
 * height is safe: the competent person on site decides.
 */
public final class OpenHours {
    private final Map<Task, List<TimeWindow>> windows;

    OpenHours(Map<Task, List<TimeWindow>> windows) {
        this.windows = new EnumMap<>(windows);
    }

    /** Sorted, disjoint and maximal windows of whole minutes within the span; a task must lie in one of them. */
    public List<TimeWindow> windows(Task task) {
        return windows.getOrDefault(task, List.of());
    }
}
