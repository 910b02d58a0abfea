package drylap.ui.shell;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Remembers what a part of a page was last drawn from, so that news which change nothing there send nothing to the browser and leave its focus
 * alone.
 */
public final class Unchanged {
    private @Nullable Object drawn;

    /** Whether it was drawn from an equal one last; if not, it is to be drawn from this one now. */
    public boolean since(Object now) {
        if (Objects.equals(drawn, now)) return true;
        drawn = now;
        return false;
    }
}
