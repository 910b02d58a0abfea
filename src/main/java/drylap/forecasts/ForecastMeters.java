package drylap.forecasts;

import static drylap.persistence.jooq.Tables.KEPT_FORECAST;
import static org.jooq.impl.DSL.max;

import drylap.platform.Measured;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.MultiGauge;
import io.micrometer.core.instrument.Tags;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.jooq.DSLContext;
import org.springframework.stereotype.Component;

/** How old the newest forecast of each source is, s. */
@Component
final class ForecastMeters implements Measured {
    private final DSLContext db;
    private final Clock clock;
    private final MultiGauge ages;

    ForecastMeters(DSLContext db, Clock clock, MeterRegistry meters) {
        this.db = db;
        this.clock = clock;
        ages = MultiGauge.builder("drylap.forecast.age.seconds").register(meters);
    }

    @Override
    public void measure() {
        Instant now = clock.instant();
        var newest = db.select(KEPT_FORECAST.SOURCE, max(KEPT_FORECAST.FETCHED_AT))
                .from(KEPT_FORECAST)
                .groupBy(KEPT_FORECAST.SOURCE)
                .fetch();
        ages.register(
                newest.map(row -> MultiGauge.Row.of(
                        Tags.of("source", row.value1()),
                        Duration.between(row.value2(), now).toSeconds())),
                true);
    }
}
