package drylap.progress;

import drylap.assembly.WorkLine;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A line that is done.
 *
 * @param at when, where known
 * @param mark the entry that says so; none where the folder was imported so
 */
public record LineDone(
        WorkLine line, @Nullable Instant at, @Nullable Mark mark) {}
