package drylap.forecasts;

import static drylap.persistence.jooq.Tables.JOB;
import static drylap.persistence.jooq.Tables.KEPT_FORECAST;
import static drylap.persistence.jooq.Tables.PLAN_FORECAST;

import drylap.platform.BackgroundWork;
import drylap.platform.JobId;
import drylap.platform.RegularWork;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/**
 * Takes forecasts of long ago away, and the fetches that brought them: a site that is asked for every hour would keep nine thousand a year. The
 * newest of a site and those that a plan was made by stay.
 */
@Service
final class OldForecasts implements RegularWork {
    /** The database keeps younger ones, whoever asks. */
    private static final int FEWEST_DAYS = 30;

    private static final int MOST_DAYS = 36_500;

    private final DSLContext db;
    private final BackgroundWork work;
    private final Clock clock;
    private final Duration kept;

    OldForecasts(
            DSLContext db, BackgroundWork work, Clock clock, @Value("${drylap.keep.forecasts-days:400}") int days) {
        if (days < FEWEST_DAYS || days > MOST_DAYS)
            throw new IllegalArgumentException(
                    "drylap.keep.forecasts-days (DRYLAP_KEEP_FORECASTS): %d; accepted: %d to %d days"
                            .formatted(days, FEWEST_DAYS, MOST_DAYS));
        this.db = db;
        this.work = work;
        this.clock = clock;
        this.kept = Duration.ofDays(days);
    }

    @Override
    public String name() {
        return "old-forecasts";
    }

    @Override
    public Duration pause() {
        return Duration.ofDays(1);
    }

    @Override
    public void run() {
        Instant before = clock.instant().minus(kept);
        var newer = KEPT_FORECAST.as("newer");
        db.deleteFrom(KEPT_FORECAST)
                .where(KEPT_FORECAST.FETCHED_AT.lt(before))
                .and(DSL.exists(DSL.selectOne()
                        .from(newer)
                        .where(newer.SITE.eq(KEPT_FORECAST.SITE), newer.ID.gt(KEPT_FORECAST.ID))))
                .and(DSL.notExists(
                        DSL.selectOne().from(PLAN_FORECAST).where(PLAN_FORECAST.KEPT_ID.eq(KEPT_FORECAST.ID))))
                .execute();
        work.remove(db.select(JOB.ID)
                .from(JOB)
                .where(JOB.KIND.eq(FetchJob.KIND), JOB.ENDED_AT.lt(before))
                .fetch(row -> new JobId(row.value1())));
    }
}
