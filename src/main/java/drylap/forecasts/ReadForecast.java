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
 */
public record ReadForecast(Forecast forecast, @Nullable Instant issuedAt, List<String> remarks) {
    public ReadForecast {
        remarks = List.copyOf(remarks);
        if (forecast.hours().isEmpty()) throw new IllegalArgumentException("a forecast without hours was not read");
    }
}
