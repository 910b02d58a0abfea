package drylap.forecasts;

import drylap.kernel.GeoPoint;
import java.time.Instant;

/** A forecast as it was fetched. */
public record KeptForecast(long id, ForecastSource source, GeoPoint place, Instant fetchedAt, ReadForecast read) {
    /** When it was made, or, where the source does not say, fetched. */
    public Instant madeAt() {
        Instant issued = read.issuedAt();
        return issued == null ? fetchedAt : issued;
    }
}
