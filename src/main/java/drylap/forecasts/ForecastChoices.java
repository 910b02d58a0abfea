package drylap.forecasts;

import static drylap.persistence.jooq.Tables.FORECAST_CHOICE;
import static drylap.persistence.jooq.Tables.FORECAST_FETCH;

import drylap.forecasts.formats.GridCell;
import drylap.kernel.Coded;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.ForecastChoiceRecord;
import drylap.platform.News;
import drylap.platform.NewsItem;
import drylap.security.History;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Saying;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Which source each site's forecast comes from. */
@Service
public final class ForecastChoices {
    /** The topic of news about choices and fetched forecasts. */
    public static final String TOPIC = "forecast";

    private static final int MOST_HOURS = 24;

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final News news;
    private final History history;

    ForecastChoices(DSLContext db, TransactionTemplate transaction, Clock clock, News news, History history) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
        this.news = news;
        this.history = history;
    }

    /** The site's choice, that of none where nobody ever chose. */
    public ForecastChoice of(Person who, SiteId site) {
        who.demand(Operation.SEE_OPEN_HOURS, site);
        return of(site).orElseGet(() -> ForecastChoice.none(site));
    }

    Optional<ForecastChoice> of(SiteId site) {
        return db.selectFrom(FORECAST_CHOICE)
                .where(FORECAST_CHOICE.SITE.eq(site.value()))
                .fetchOptional(ForecastChoices::choice);
    }

    /** The choices of these sites that name a source. */
    List<ForecastChoice> withSource(List<SiteId> sites) {
        return db.selectFrom(FORECAST_CHOICE)
                .where(FORECAST_CHOICE.SITE.in(sites.stream().map(SiteId::value).toList()))
                .and(FORECAST_CHOICE.SOURCE.isNotNull())
                .fetch(ForecastChoices::choice);
    }

    /** Chooses; the first fetch is due at once. */
    public ForecastChoiceResult choose(Person who, ForecastChoice wanted) {
        who.demand(Operation.CHOOSE_FORECAST, wanted.site());
        if (wanted.everyHours() < 1 || wanted.everyHours() > MOST_HOURS)
            return new ForecastChoiceResult.Refused(
                    Saying.of("every {0} hours; 1 to {1} are accepted", wanted.everyHours(), MOST_HOURS));
        if (wanted.cell() != null && !GridCell.isOne(wanted.cell()))
            return new ForecastChoiceResult.Refused(Saying.of(
                    "''{0}'' is no grid cell; a blank, or one such as SEW/125,68 is accepted", wanted.cell()));
        if (wanted.cell() != null && wanted.source() != ForecastSource.US_WEATHER_SERVICE)
            return new ForecastChoiceResult.Refused(
                    Saying.of("only the US National Weather Service has grid cells; leave it blank"));
        return transaction.execute(_ -> save(who, wanted));
    }

    private ForecastChoiceResult save(Person who, ForecastChoice wanted) {
        db.insertInto(FORECAST_CHOICE)
                .set(FORECAST_CHOICE.SITE, wanted.site().value())
                .set(FORECAST_CHOICE.EVERY_HOURS, wanted.everyHours())
                .set(FORECAST_CHOICE.PERSON_ID, who.id().value())
                .set(FORECAST_CHOICE.PERSON, who.name())
                .set(FORECAST_CHOICE.CHOSEN_AT, clock.instant())
                .onConflictDoNothing()
                .execute();
        Optional<ForecastChoice> saved = db.update(FORECAST_CHOICE)
                .set(
                        FORECAST_CHOICE.SOURCE,
                        wanted.source() == null ? null : wanted.source().code())
                .set(FORECAST_CHOICE.CELL, wanted.cell())
                .set(FORECAST_CHOICE.EVERY_HOURS, wanted.everyHours())
                .set(FORECAST_CHOICE.VERSION, wanted.version() + 1)
                .set(FORECAST_CHOICE.PERSON_ID, who.id().value())
                .set(FORECAST_CHOICE.PERSON, who.name())
                .set(FORECAST_CHOICE.CHOSEN_AT, clock.instant())
                .where(FORECAST_CHOICE.SITE.eq(wanted.site().value()), FORECAST_CHOICE.VERSION.eq(wanted.version()))
                .returning()
                .fetchOptional(ForecastChoices::choice);
        if (saved.isEmpty())
            return new ForecastChoiceResult.ChangedMeanwhile(of(wanted.site()).orElseThrow());
        beginAnew(wanted, clock.instant());
        history.note(
                who,
                wanted.site(),
                "chose the forecast: "
                        + (wanted.source() == null
                                ? "that of the job folder"
                                : wanted.source().words()));
        news.tell(new NewsItem(TOPIC, 0, wanted.site().value(), "chosen"));
        return new ForecastChoiceResult.Chosen(saved.get());
    }

    /** What the former source asked of us says nothing about this one. */
    private void beginAnew(ForecastChoice wanted, Instant now) {
        SiteId site = wanted.site();
        db.deleteFrom(FORECAST_FETCH)
                .where(FORECAST_FETCH.SITE.eq(site.value()))
                .execute();
        if (wanted.source() != null && !wanted.source().fetched()) return;
        db.insertInto(FORECAST_FETCH)
                .set(FORECAST_FETCH.SITE, site.value())
                .set(FORECAST_FETCH.DUE_AT, now)
                .execute();
    }

    private static ForecastChoice choice(ForecastChoiceRecord row) {
        String source = row.getSource();
        return new ForecastChoice(
                new SiteId(row.getSite()),
                source == null ? null : Coded.of(ForecastSource.class, source),
                row.getCell(),
                row.getEveryHours(),
                row.getVersion(),
                row.getPerson(),
                row.getChosenAt());
    }
}
