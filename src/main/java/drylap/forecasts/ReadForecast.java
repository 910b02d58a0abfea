package drylap.forecasts;

import drylap.weather.Forecast;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A forecast as a source gave it, in half-open hours, metres per second, millimetres and fractions of one.
 *
 * @param issuedAt when the source made it; null where the source does not say
 * @param remarks what whoever plans by it should know: stand-ins, contradictions, an early end
 * @param periods of hours of this forecast that have chances of their own too
 */
public record ReadForecast(
        Forecast forecast, @Nullable Instant issuedAt, List<String> remarks, List<PeriodChance> periods) {
    public ReadForecast {
        remarks = List.copyOf(remarks);
        periods = List.copyOf(periods);
        if (forecast.hours().isEmpty()) throw new IllegalArgumentException("a forecast without hours was not read");
    }

    /** Of a source that tells each hour's chance once. */
    public ReadForecast(Forecast forecast, @Nullable Instant issuedAt, List<String> remarks) {
        this(forecast, issuedAt, remarks, List.of());
    }
}
