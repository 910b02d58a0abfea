package drylap.forecasts;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How the last go at a site's source ended.
 *
 * @param triedAt null where none has ended yet
 * @param words what was fetched, or why nothing was
 * @param dueAt when the next go is due
 * @param notBefore until when the source asked not to be asked again; null where it did not
 */
public record FetchState(
        @Nullable Instant triedAt,
        @Nullable FetchOutcome outcome,
        String words,
        Instant dueAt,
        @Nullable Instant notBefore) {}
