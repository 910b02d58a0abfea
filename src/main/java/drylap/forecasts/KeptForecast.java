package drylap.forecasts;

import drylap.kernel.GeoPoint;
import drylap.weather.ForecastOrigin;
import java.time.Instant;

/** A forecast as it was fetched. */
public record KeptForecast(long id, ForecastSource source, GeoPoint place, Instant fetchedAt, ReadForecast read) {
    /** When it was made, or, where the source does not say, fetched. */
    public Instant madeAt() {
        return origin().madeAt();
    }

    public ForecastOrigin origin() {
        return new ForecastOrigin(id, source.words(), read.issuedAt(), fetchedAt);
    }
}
