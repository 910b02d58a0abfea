package drylap.planning;

import static drylap.persistence.jooq.Tables.PLAN_FORECAST;

import drylap.kernel.SiteId;
import drylap.persistence.TableCopy;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.PlanForecastRecord;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.weather.Forecast;
import drylap.weather.ForecastOrigin;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** By which forecasts stored plans were made. */
@Service
public final class PlanForecasts {
    private final DSLContext db;

    PlanForecasts(DSLContext db) {
        this.db = db;
    }

    /** At the person's sites, by site; nothing for plans from before this was written down. */
    public List<PlanForecast> of(Person who, PlanId plan) {
        who.demand(Operation.SEE_OPEN_HOURS);
        return db.selectFrom(PLAN_FORECAST)
                .where(PLAN_FORECAST.PLAN_ID.eq(plan.value()), Within.reach(PLAN_FORECAST.SITE, who.reach()))
                .orderBy(PLAN_FORECAST.SITE)
                .fetch(row -> new PlanForecast(new SiteId(row.getSite()), origin(row), row.getToldUntil()));
    }

    /** In the transaction that stores the plan. */
    void save(PlanId plan, JobFolder folder) {
        Map<SiteId, Forecast> told =
                folder.forecasts().stream().collect(Collectors.toMap(Forecast::site, Function.identity()));
        TableCopy.add(
                db,
                folder.sites().stream()
                        .map(site -> row(plan, told.getOrDefault(site.id(), Forecast.none(site.id()))))
                        .toList());
    }

    private static PlanForecastRecord row(PlanId plan, Forecast forecast) {
        ForecastOrigin origin = forecast.origin();
        return new PlanForecastRecord(
                plan.value(),
                forecast.site().value(),
                origin == null ? null : origin.kept(),
                origin == null ? null : origin.source(),
                origin == null ? null : origin.issuedAt(),
                origin == null ? null : origin.fetchedAt(),
                forecast.hours().isEmpty() ? null : forecast.end());
    }

    private static @Nullable ForecastOrigin origin(PlanForecastRecord row) {
        if (row.getKeptId() == null) return null;
        return new ForecastOrigin(
                row.getKeptId(),
                Objects.requireNonNull(row.getSource()),
                row.getIssuedAt(),
                Objects.requireNonNull(row.getFetchedAt()));
    }
}
