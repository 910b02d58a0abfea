package drylap.planning;

import drylap.kernel.SiteId;
import drylap.weather.ForecastOrigin;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * By which forecast of a site a plan was made.
 *
 * @param origin null where it was the job folder's own
 * @param toldUntil from when on hours were counted as open; null where there was no forecast at all
 */
public record PlanForecast(
        SiteId site,
        @Nullable ForecastOrigin origin,
        @Nullable Instant toldUntil) {}
