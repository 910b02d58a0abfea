package drylap.weather;

import drylap.kernel.SiteId;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A site's forecast: hours in order and without a gap; none at all where nothing is forecast.
 *
 * @param origin null where it is the job folder's own
 */
public record Forecast(
        SiteId site, List<ForecastHour> hours, @Nullable ForecastOrigin origin) {
    public Forecast {
        hours = List.copyOf(hours);
        for (int i = 1; i < hours.size(); i++) {
            Instant expected = hours.get(i - 1).start().plus(Duration.ofHours(1));
            if (!hours.get(i).start().equals(expected))
                throw new IllegalArgumentException("the forecast of site %s jumps from %s to %s"
                        .formatted(site, hours.get(i - 1).start(), hours.get(i).start()));
        }
    }

    /** As a job folder has it. */
    public Forecast(SiteId site, List<ForecastHour> hours) {
        this(site, hours, null);
    }

    public Forecast from(ForecastOrigin other) {
        return new Forecast(site, hours, other);
    }

    public static Forecast none(SiteId site) {
        return new Forecast(site, List.of());
    }

    /** Where "beyond the forecast" begins; the far past when nothing is forecast. */
    public Instant end() {
        return hours.isEmpty() ? Instant.MIN : hours.getLast().start().plus(Duration.ofHours(1));
    }
}
