package drylap.forecasts;

import static drylap.persistence.jooq.Tables.KEPT_FORECAST;
import static org.jooq.impl.DSL.cardinality;
import static org.jooq.impl.DSL.field;

import drylap.forecasts.LastingRain.Unsolved;
import drylap.forecasts.LastingSolver.Telling;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.speech.Saying;
import drylap.weather.ForecastHour;
import drylap.weather.RainPersistence.Told;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.springframework.stereotype.Service;

/** How rain lasts at a site, from kept forecasts that tell chances of hours and of several hours together. */
@Service
public final class LastingRains {
    /** Showers of summer and rain of winter do not last alike. */
    private static final Duration BACK = Duration.ofDays(30);

    /** One forecast in so long tells all periods; each of them loads hundreds of hours. */
    private static final Field<OffsetDateTime> SLOT = field(
            "date_bin(interval '6 hours', {0}, timestamptz 'epoch')", OffsetDateTime.class, KEPT_FORECAST.FETCHED_AT);

    private final DSLContext db;
    private final Clock clock;

    LastingRains(DSLContext db, Clock clock) {
        this.db = db;
        this.clock = clock;
    }

    /** At the site's place, of the last 30 days. */
    public LastingRain of(Person who, Site site) {
        who.demand(Operation.SEE_OPEN_HOURS, site.id());
        List<KeptForecast> both = tellingBoth(site);
        if (both.isEmpty())
            return new Unsolved(Saying.of(
                    "no forecast of the last 30 days is kept that tells chances of single hours and of several together; {0} does",
                    Saying.of(ForecastSource.MET_NORWAY.words())));
        ForecastSource source = both.getLast().source();
        List<KeptForecast> ofIt =
                both.stream().filter(one -> one.source() == source).toList();
        return LastingSolver.of(source, tellings(ofIt, site));
    }

    private List<KeptForecast> tellingBoth(Site site) {
        return db.select(KEPT_FORECAST.fields())
                .distinctOn(SLOT)
                .from(KEPT_FORECAST)
                .where(KEPT_FORECAST.SITE.eq(site.id().value()))
                .and(KEPT_FORECAST.LATITUDE.eq(site.place().latitude()))
                .and(KEPT_FORECAST.LONGITUDE.eq(site.place().longitude()))
                .and(KEPT_FORECAST.FETCHED_AT.ge(clock.instant().minus(BACK)))
                .and(cardinality(KEPT_FORECAST.PERIOD_FROM_H).gt(0))
                .orderBy(SLOT, KEPT_FORECAST.ID.desc())
                .fetch(row -> KeptRows.kept(row.into(KEPT_FORECAST)));
    }

    /** Of each hour one telling at most, of the newest forecast that told it. */
    static List<Telling> tellings(List<KeptForecast> oldestFirst, Site site) {
        NavigableMap<Instant, PeriodOf> all = new TreeMap<>();
        oldestFirst.forEach(one ->
                one.read().periods().forEach(period -> all.put(period.from(), new PeriodOf(period, one))));
        List<Telling> apart = new ArrayList<>();
        Instant told = Instant.MIN;
        for (PeriodOf one : all.values()) {
            if (one.period().from().isBefore(told)) continue;
            told = one.period().from().plus(Duration.ofHours(one.period().hours()));
            apart.add(one.telling(site));
        }
        return apart;
    }

    private record PeriodOf(PeriodChance period, KeptForecast of) {
        Telling telling(Site site) {
            List<ForecastHour> hours = of.read().forecast().hours();
            int first = (int)
                    Duration.between(hours.getFirst().start(), period.from()).toHours();
            return new Telling(
                    period.from().atZone(site.zone()).toLocalDate(),
                    new Told(
                            hours.subList(first, first + period.hours()).stream()
                                    .map(ForecastHour::rainProbability)
                                    .toList(),
                            period.chance()));
        }
    }
}
