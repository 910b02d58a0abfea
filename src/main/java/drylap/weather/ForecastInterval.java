package drylap.weather;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;

/** A time with its length in whole hours, as gridded forecasts state what their values hold for. */
public record ForecastInterval(Instant start, Duration length) {
    public ForecastInterval {
        if (length.isNegative() || length.isZero() || !length.equals(Duration.ofHours(length.toHours())))
            throw new IllegalArgumentException("an interval of %s is not made of whole hours".formatted(length));
    }

    /** Reads ISO 8601 such as {@code 2024-02-23T12:00:00+00:00/P2DT18H}; months and years have no fixed length and are refused. */
    public static ForecastInterval parse(String text) {
        int slash = text.indexOf('/');
        try {
            if (slash < 0) throw new DateTimeException("no slash");
            return new ForecastInterval(
                    OffsetDateTime.parse(text.substring(0, slash)).toInstant(),
                    Duration.parse(text.substring(slash + 1)));
        } catch (DateTimeException | IllegalArgumentException unreadable) {
            throw new IllegalArgumentException(
                    "'%s' is no interval; accepted is a time with offset, a slash and whole hours, such as 2024-02-23T12:00:00Z/PT6H"
                            .formatted(text),
                    unreadable);
        }
    }

    public int hours() {
        return Math.toIntExact(length.toHours());
    }

    /** What each hour gets of a total over the interval, such as millimetres of rain: an even share. */
    public double hourlyShare(double total) {
        return total / hours();
    }
}
