package drylap.forecasts;

import static drylap.persistence.jooq.Tables.FORECAST_CHOICE;
import static drylap.persistence.jooq.Tables.FORECAST_FETCH;
import static drylap.persistence.jooq.Tables.KEPT_FORECAST;
import static org.jooq.impl.DSL.count;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.max;
import static org.jooq.impl.DSL.select;

import drylap.kernel.Coded;
import drylap.security.Operation;
import drylap.security.Person;
import java.time.Instant;
import java.util.List;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** How old what each source told last is, for whoever looks after the machine. */
@Service
public final class SourceAges {
    private final DSLContext db;

    SourceAges(DSLContext db) {
        this.db = db;
    }

    /**
     * @param sites that are planned by it
     * @param failing of these, whose last tries all went wrong
     * @param newest when the newest was fetched; none where none ever was
     */
    public record Age(
            ForecastSource source,
            int sites,
            int failing,
            @Nullable Instant newest) {}

    /** Of each source that some site is planned by. */
    public List<Age> all(Person who) {
        who.demand(Operation.SEE_MACHINE);
        var newest = field(select(max(KEPT_FORECAST.FETCHED_AT))
                .from(KEPT_FORECAST)
                .where(KEPT_FORECAST.SOURCE.eq(FORECAST_CHOICE.SOURCE)));
        return db.select(FORECAST_CHOICE.SOURCE, count(), count().filterWhere(FORECAST_FETCH.FAILURES.gt(0)), newest)
                .from(FORECAST_CHOICE)
                .leftJoin(FORECAST_FETCH)
                .on(FORECAST_FETCH.SITE.eq(FORECAST_CHOICE.SITE))
                .where(FORECAST_CHOICE.SOURCE.isNotNull())
                .groupBy(FORECAST_CHOICE.SOURCE)
                .orderBy(FORECAST_CHOICE.SOURCE)
                .fetch(row -> new Age(
                        Coded.of(ForecastSource.class, row.value1()), row.value2(), row.value3(), row.value4()));
    }
}
