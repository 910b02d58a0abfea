package drylap.forecasts;

import static drylap.persistence.jooq.Tables.FORECAST_CHOICE;
import static drylap.persistence.jooq.Tables.JOB;
import static drylap.persistence.jooq.Tables.KEPT_FORECAST;

import drylap.kernel.SiteId;
import drylap.platform.JobId;
import java.util.Collection;
import java.util.List;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** Takes away what was chosen and kept for sites that no job folder knows any more. */
@Service
public final class ForgottenSites {
    private final DSLContext db;

    ForgottenSites(DSLContext db) {
        this.db = db;
    }

    /** Joins the caller's transaction, in which the sites have gone already. */
    public void forget(Collection<SiteId> sites) {
        List<String> ids = ids(sites);
        db.deleteFrom(FORECAST_CHOICE).where(FORECAST_CHOICE.SITE.in(ids)).execute();
        db.deleteFrom(KEPT_FORECAST).where(KEPT_FORECAST.SITE.in(ids)).execute();
    }

    /** The fetches that were ever asked for them. */
    public List<JobId> fetches(Collection<SiteId> sites) {
        return db.select(JOB.ID)
                .from(JOB)
                .where(JOB.KIND.eq(FetchJob.KIND), JOB.PAYLOAD.in(ids(sites)))
                .fetch(row -> new JobId(row.value1()));
    }

    private static List<String> ids(Collection<SiteId> sites) {
        return sites.stream().map(SiteId::value).toList();
    }
}
