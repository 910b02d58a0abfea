package drylap.forecasts.fetching;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What came of asking a source. */
public sealed interface Answer {
    /**
     * How an answer is known again, and until when it need not be asked for.
     *
     * @param modified its Last-Modified as it came
     */
    record Stamp(
            @Nullable String etag,
            @Nullable String modified,
            @Nullable Instant expires) {
        public static final Stamp NONE = new Stamp(null, null, null);
    }

    record Whole(byte[] bytes, Stamp stamp) implements Answer {}

    /** The last answer still holds. */
    record Unchanged(Stamp stamp) implements Answer {}

    /**
     * No answer.
     *
     * @param asked whether it was the source that does not want to be asked for now, so that a person cannot hurry it either
     * @param pause how long it asked to wait; null where it did not say
     */
    record None(String why, boolean asked, @Nullable Duration pause) implements Answer {}
}
