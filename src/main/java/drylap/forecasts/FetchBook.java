package drylap.forecasts;

import static drylap.persistence.jooq.Tables.FORECAST_CHOICE;
import static drylap.persistence.jooq.Tables.FORECAST_FETCH;
import static org.jooq.impl.DSL.greatest;
import static org.jooq.impl.DSL.select;
import static org.jooq.impl.DSL.val;

import drylap.forecasts.fetching.Answer;
import drylap.kernel.Coded;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.ForecastFetchRecord;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Writes down how each go at a source ended, and when the next is due. */
@Service
final class FetchBook {
    private static final Duration FIRST_PAUSE = Duration.ofMinutes(5);
    private static final Duration LONGEST_PAUSE = Duration.ofHours(6);
    private static final int MOST_DOUBLINGS = 7;

    private final DSLContext db;

    FetchBook(DSLContext db) {
        this.db = db;
    }

    /** Sites whose source is due, the longest due first. */
    List<SiteId> due(Instant now, int atMost) {
        return db.select(FORECAST_FETCH.SITE)
                .from(FORECAST_FETCH)
                .join(FORECAST_CHOICE)
                .on(FORECAST_CHOICE.SITE.eq(FORECAST_FETCH.SITE))
                .where(FORECAST_CHOICE.SOURCE.isNotNull(), FORECAST_FETCH.DUE_AT.le(now))
                .orderBy(FORECAST_FETCH.DUE_AT)
                .limit(atMost)
                .fetch(row -> new SiteId(row.value1()));
    }

    Optional<FetchState> state(SiteId site) {
        return row(site)
                .map(row -> new FetchState(
                        row.getTriedAt(),
                        row.getOutcome() == null ? null : Coded.of(FetchOutcome.class, row.getOutcome()),
                        row.getWords(),
                        row.getDueAt(),
                        row.getNotBefore()));
    }

    /** Whether the source asked not to be asked again yet. */
    boolean leftAlone(SiteId site, Instant now) {
        return state(site).map(FetchState::notBefore).filter(now::isBefore).isPresent();
    }

    Answer.Stamp stamp(SiteId site) {
        return row(site)
                .map(row -> new Answer.Stamp(row.getEtag(), row.getModified(), null))
                .orElse(Answer.Stamp.NONE);
    }

    private Optional<ForecastFetchRecord> row(SiteId site) {
        return db.selectFrom(FORECAST_FETCH)
                .where(FORECAST_FETCH.SITE.eq(site.value()))
                .fetchOptional();
    }

    /** A good end: the next go is due after the chosen hours, and not before the answer grows old. */
    void ended(ForecastChoice choice, FetchOutcome outcome, String words, Answer.Stamp stamp, Instant now) {
        Instant due = now.plus(Duration.ofHours(choice.everyHours()));
        Instant expires = stamp.expires();
        db.update(FORECAST_FETCH)
                .set(FORECAST_FETCH.TRIED_AT, now)
                .set(FORECAST_FETCH.OUTCOME, outcome.code())
                .set(FORECAST_FETCH.WORDS, words)
                .set(FORECAST_FETCH.FAILURES, 0)
                .set(FORECAST_FETCH.DUE_AT, expires != null && expires.isAfter(due) ? atMostADayOn(expires, now) : due)
                .setNull(FORECAST_FETCH.NOT_BEFORE)
                .set(FORECAST_FETCH.ETAG, stamp.etag())
                .set(FORECAST_FETCH.MODIFIED, stamp.modified())
                .where(FORECAST_FETCH.SITE.eq(choice.site().value()))
                .execute();
    }

    private static Instant atMostADayOn(Instant expires, Instant now) {
        Instant day = now.plus(Duration.ofDays(1));
        return expires.isAfter(day) ? day : expires;
    }

    /** What was sent is no forecast: the same bytes are no better for being sent again, so newer ones are waited for. */
    void refused(ForecastChoice choice, String words, Instant now) {
        bad(choice, FetchOutcome.REFUSED, words, now, now.plus(Duration.ofHours(choice.everyHours())), null);
    }

    /** No answer: each pause is twice the last, or what the source asked for; what it asked for holds for all of its sites. */
    void unanswered(ForecastChoice choice, Answer.None none, Instant now) {
        int failures = row(choice.site()).map(ForecastFetchRecord::getFailures).orElse(0);
        Duration own = FIRST_PAUSE.multipliedBy(1L << Math.min(failures, MOST_DOUBLINGS));
        Duration pause = none.pause() != null ? none.pause() : own.compareTo(LONGEST_PAUSE) > 0 ? LONGEST_PAUSE : own;
        Instant until = now.plus(pause);
        bad(choice, FetchOutcome.UNANSWERED, none.why(), now, until, none.asked() ? until : null);
        if (none.asked()) leaveAlone(choice, until);
    }

    private void bad(
            ForecastChoice choice,
            FetchOutcome outcome,
            String words,
            Instant now,
            Instant due,
            @Nullable Instant notBefore) {
        db.update(FORECAST_FETCH)
                .set(FORECAST_FETCH.TRIED_AT, now)
                .set(FORECAST_FETCH.OUTCOME, outcome.code())
                .set(FORECAST_FETCH.WORDS, words)
                .set(FORECAST_FETCH.FAILURES, FORECAST_FETCH.FAILURES.plus(1))
                .set(FORECAST_FETCH.DUE_AT, due)
                .set(FORECAST_FETCH.NOT_BEFORE, notBefore)
                .where(FORECAST_FETCH.SITE.eq(choice.site().value()))
                .execute();
    }

    private void leaveAlone(ForecastChoice choice, Instant until) {
        if (choice.source() == null) return;
        db.update(FORECAST_FETCH)
                .set(FORECAST_FETCH.DUE_AT, greatest(FORECAST_FETCH.DUE_AT, val(until)))
                .set(FORECAST_FETCH.NOT_BEFORE, until)
                .where(FORECAST_FETCH.SITE.in(select(FORECAST_CHOICE.SITE)
                        .from(FORECAST_CHOICE)
                        .where(FORECAST_CHOICE.SOURCE.eq(choice.source().code()))))
                .execute();
    }
}
