package drylap.forecasts;

import drylap.kernel.SiteId;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Where a site's forecast comes from.
 *
 * @param source null where nobody wants one: the job folder's forecast holds
 * @param cell the US service's grid cell, such as {@code SEW/125,68}; null where it is to be asked for
 * @param everyHours how often it is fetched
 * @param version 0 where nobody ever chose; whoever changes it names the one that they saw
 * @param by who chose, blank where nobody did
 */
public record ForecastChoice(
        SiteId site,
        @Nullable ForecastSource source,
        @Nullable String cell,
        int everyHours,
        int version,
        String by,
        @Nullable Instant at) {
    /** Often enough for sources that are made anew a few times a day. */
    public static final int USUAL_HOURS = 2;

    static ForecastChoice none(SiteId site) {
        return new ForecastChoice(site, null, null, USUAL_HOURS, 0, "", null);
    }
}
