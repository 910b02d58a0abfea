package drylap.forecasts.fetching;

import drylap.forecasts.ForecastReader;
import drylap.forecasts.ForecastSettings;
import drylap.forecasts.ForecastWords;
import java.io.IOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.HttpTimeoutException;
import java.time.Clock;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;

/**
 * One question to a source: says who asks, asks only for what is newer, waits no longer than set, and takes no more bytes
 * than a forecast has. It does not ask again by itself.
 */
public final class SourceClient implements AutoCloseable {
    private final ForecastSettings settings;
    private final Clock clock;
    private final HttpClient http;

    public SourceClient(ForecastSettings settings, Clock clock) {
        this.settings = settings;
        this.clock = clock;
        http = HttpClient.newBuilder()
                .connectTimeout(settings.connect())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
    }

    /** @param known the stamp of the last answer, {@link Answer.Stamp#NONE} where there is none */
    public Answer ask(URI address, Answer.Stamp known) throws InterruptedException {
        CompletableFuture<HttpResponse<byte[]>> coming = http.sendAsync(
                question(address, known), BodyHandlers.limiting(BodyHandlers.ofByteArray(), ForecastReader.MOST_BYTES));
        try {
            return new Reply(address, known, clock)
                    .answer(coming.get(settings.whole().toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException slow) {
            return none(ForecastWords.NOT_WITHIN.with(
                    address.getHost(), settings.whole().toSeconds()));
        } catch (ExecutionException failed) {
            return none(why(address, failed.getCause()));
        } finally {
            coming.cancel(true);
        }
    }

    private HttpRequest question(URI address, Answer.Stamp known) {
        var question = HttpRequest.newBuilder(address)
                .timeout(settings.whole())
                .header("User-Agent", settings.userAgent())
                .header("Accept", "application/geo+json, application/json, text/csv, */*;q=0.5");
        if (known.etag() != null) question.header("If-None-Match", known.etag());
        if (known.modified() != null) question.header("If-Modified-Since", known.modified());
        return question.GET().build();
    }

    private static String why(URI address, @Nullable Throwable cause) {
        String host = address.getHost();
        if (cause instanceof HttpConnectTimeoutException) return ForecastWords.NO_CONNECTION.with(host);
        if (cause instanceof ConnectException) return ForecastWords.NOT_REACHED.with(host);
        if (cause instanceof HttpTimeoutException) return ForecastWords.NOT_IN_TIME.with(host);
        boolean large = cause instanceof IOException
                && String.valueOf(cause.getMessage()).contains("exceeds capacity");
        return large
                ? ForecastWords.SENT_TOO_MUCH.with(host)
                : ForecastWords.BROKE_OFF.with(
                        host, cause == null ? "?" : cause.getClass().getSimpleName());
    }

    private static Answer.None none(String why) {
        return new Answer.None(why, false, null);
    }

    @Override
    public void close() {
        http.shutdownNow();
    }
}
