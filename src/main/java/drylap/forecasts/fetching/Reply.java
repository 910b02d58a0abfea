package drylap.forecasts.fetching;

import drylap.forecasts.ForecastWords;
import java.net.URI;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what the status and the headers of a response say. */
record Reply(URI address, Answer.Stamp known, Clock clock) {
    private static final int NON_AUTHORITATIVE = 203;
    /** Nobody is believed who wants to be left alone for longer. */
    private static final Duration LONGEST_WAIT = Duration.ofDays(1);

    Answer answer(HttpResponse<byte[]> response) {
        String host = address.getHost();
        int status = response.statusCode();
        return switch (status) {
            case 200, NON_AUTHORITATIVE -> new Answer.Whole(response.body(), stamp(response, Answer.Stamp.NONE));
            case 304 -> new Answer.Unchanged(stamp(response, known));
            case 403 -> refused(ForecastWords.REFUSES.with(host), response);
            case 404 -> new Answer.None(ForecastWords.KNOWS_NONE.with(host), false, null);
            case 429 -> refused(ForecastWords.ASKED_TOO_OFTEN.with(host), response);
            default ->
                status >= 500
                        ? refused(ForecastWords.OUT_OF_ORDER.with(host, status), response)
                        : new Answer.None(ForecastWords.STATUS.with(host, status), false, pause(response));
        };
    }

    private Answer.None refused(String why, HttpResponse<byte[]> response) {
        return new Answer.None(why, true, pause(response));
    }

    private static Answer.Stamp stamp(HttpResponse<byte[]> response, Answer.Stamp before) {
        var headers = response.headers();
        return new Answer.Stamp(
                headers.firstValue("ETag").orElse(before.etag()),
                headers.firstValue("Last-Modified").orElse(before.modified()),
                headers.firstValue("Expires").flatMap(Reply::time).orElse(null));
    }

    /** Retry-After is a number of seconds or a time (RFC 9110, 10.2.3). */
    private @Nullable Duration pause(HttpResponse<byte[]> response) {
        return response.headers()
                .firstValue("Retry-After")
                .flatMap(text ->
                        seconds(text).or(() -> time(text).map(until -> Duration.between(clock.instant(), until))))
                .filter(Duration::isPositive)
                .map(wait -> wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait)
                .orElse(null);
    }

    private static Optional<Duration> seconds(String text) {
        return text.matches("\\d{1,9}") ? Optional.of(Duration.ofSeconds(Long.parseLong(text))) : Optional.empty();
    }

    private static Optional<Instant> time(String text) {
        try {
            return Optional.of(ZonedDateTime.parse(text, DateTimeFormatter.RFC_1123_DATE_TIME)
                    .toInstant());
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }
}
