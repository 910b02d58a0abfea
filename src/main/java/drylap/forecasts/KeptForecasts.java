package drylap.forecasts;

import static drylap.persistence.jooq.Tables.FORECAST_CHOICE;
import static drylap.persistence.jooq.Tables.KEPT_FORECAST;
import static org.jooq.impl.DSL.lateral;
import static org.jooq.impl.DSL.selectFrom;

import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.sites.Site;
import drylap.weather.Forecast;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Every forecast that was fetched, as it was; the newest of a site's chosen source is planned by. */
@Service
public final class KeptForecasts {
    /** Former forecasts tell the hours before the newest, on which the drying of a wall depends. */
    private static final int FORMER = 30;

    private final DSLContext db;
    private final ForecastChoices choices;
    private final Clock clock;

    KeptForecasts(DSLContext db, ForecastChoices choices, Clock clock) {
        this.db = db;
        this.choices = choices;
        this.clock = clock;
    }

    /** Keeps it, unless it says what the newest of the site says already. */
    boolean keep(ForecastSource source, Site site, ReadForecast read, Instant fetchedAt) {
        boolean known = newest(site.id(), 1).stream()
                .anyMatch(last -> last.source() == source
                        && last.place().equals(site.place())
                        && last.read().equals(read));
        if (!known) db.executeInsert(KeptRows.row(source, site, read, fetchedAt));
        return !known;
    }

    /** The site's newest, newest first. */
    public List<KeptForecast> newest(Person who, SiteId site, int atMost) {
        who.demand(Operation.SEE_OPEN_HOURS, site);
        return newest(site, atMost);
    }

    /** What the site is planned by; nothing where that is the job folder's own forecast. */
    public Optional<KeptForecast> inUse(Person who, Site site, Forecast imported) {
        who.demand(Operation.SEE_OPEN_HOURS, site.id());
        return choices.of(site.id()).flatMap(choice -> inUse(choice, site, imported, newest(site.id(), FORMER)));
    }

    /** Of one site, among the newest that are kept; nothing where there is none of that number. */
    public Optional<Forecast> told(Person who, Site site, long kept) {
        who.demand(Operation.SEE_OPEN_HOURS, site.id());
        List<KeptForecast> upToIt =
                newest(KEPT_FORECAST.SITE.eq(site.id().value()).and(KEPT_FORECAST.ID.le(kept)), FORMER);
        return upToIt.stream()
                .findFirst()
                .filter(one -> one.id() == kept)
                .map(one -> joined(one, site, upToIt, Forecast.none(site.id())));
    }

    /** The forecasts that a job folder is planned by: those of chosen sources, with the folder's own for the rest. */
    public List<Forecast> over(List<Site> sites, List<Forecast> imported) {
        Map<SiteId, ForecastChoice> chosen = new HashMap<>();
        choices.withSource(sites.stream().map(Site::id).toList()).forEach(one -> chosen.put(one.site(), one));
        if (chosen.isEmpty()) return imported;
        Map<SiteId, List<KeptForecast>> kept = newest(chosen.keySet());
        Map<SiteId, Forecast> own = new HashMap<>();
        imported.forEach(one -> own.put(one.site(), one));
        List<Forecast> all = new ArrayList<>();
        for (Site site : sites) {
            Forecast before = own.getOrDefault(site.id(), Forecast.none(site.id()));
            ForecastChoice choice = chosen.get(site.id());
            if (choice != null) all.add(over(choice, site, before, kept.getOrDefault(site.id(), List.of())));
            else if (own.containsKey(site.id())) all.add(before);
        }
        return all;
    }

    private Forecast over(ForecastChoice choice, Site site, Forecast imported, List<KeptForecast> kept) {
        return inUse(choice, site, imported, kept)
                .map(used -> joined(used, site, kept, imported))
                .orElse(imported);
    }

    private static Forecast joined(KeptForecast used, Site site, List<KeptForecast> kept, Forecast imported) {
        List<Forecast> former = kept.stream()
                .filter(one -> one.id() < used.id())
                .filter(one -> one.place().equals(site.place()))
                .map(one -> one.read().forecast())
                .toList();
        return HoursBefore.joined(used.read().forecast(), former, imported).from(used.origin());
    }

    /** The newest of the source at the site's place, unless it is over and the job folder's own goes on. */
    private Optional<KeptForecast> inUse(ForecastChoice choice, Site site, Forecast imported, List<KeptForecast> kept) {
        return kept.stream()
                .filter(one -> one.source() == choice.source() && one.place().equals(site.place()))
                .findFirst()
                .filter(one -> {
                    Instant end = one.read().forecast().end();
                    return end.isAfter(clock.instant()) || !imported.end().isAfter(end);
                });
    }

    private List<KeptForecast> newest(SiteId site, int atMost) {
        return newest(KEPT_FORECAST.SITE.eq(site.value()), atMost);
    }

    private List<KeptForecast> newest(Condition which, int atMost) {
        return db.selectFrom(KEPT_FORECAST)
                .where(which)
                .orderBy(KEPT_FORECAST.ID.desc())
                .limit(atMost)
                .fetch(KeptRows::kept);
    }

    /** The newest of each site, newest first, in one question: a folder may have hundreds of sites. */
    private Map<SiteId, List<KeptForecast>> newest(Set<SiteId> sites) {
        var ofTheSite = lateral(selectFrom(KEPT_FORECAST)
                        .where(KEPT_FORECAST.SITE.eq(FORECAST_CHOICE.SITE))
                        .orderBy(KEPT_FORECAST.ID.desc())
                        .limit(FORMER))
                .as("of_the_site");
        return db
                .select(ofTheSite.fields(KEPT_FORECAST.fields()))
                .from(FORECAST_CHOICE, ofTheSite)
                .where(FORECAST_CHOICE.SITE.in(sites.stream().map(SiteId::value).toList()))
                .orderBy(ofTheSite.field(KEPT_FORECAST.ID).desc())
                .fetch(row -> KeptRows.kept(row.into(KEPT_FORECAST)))
                .stream()
                .collect(Collectors.groupingBy(one -> one.read().forecast().site()));
    }
}
