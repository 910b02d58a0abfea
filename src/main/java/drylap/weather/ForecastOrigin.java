package drylap.weather;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Where a forecast that is not the job folder's own comes from.
 *
 * @param kept its number among the kept forecasts
 * @param source in words, as a screen names it
 * @param issuedAt when the source made it; null where the source does not say
 */
public record ForecastOrigin(
        long kept, String source, @Nullable Instant issuedAt, Instant fetchedAt) {
    /** When it was made, or, where the source does not say, fetched. */
    public Instant madeAt() {
        return issuedAt == null ? fetchedAt : issuedAt;
    }
}
