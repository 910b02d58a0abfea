package drylap.platform;

import static drylap.persistence.jooq.Tables.JOB;
import static org.jooq.impl.DSL.count;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.MultiGauge;
import io.micrometer.core.instrument.Tags;
import org.jooq.DSLContext;
import org.springframework.stereotype.Component;

/** Jobs by kind and state: those of all nodes as the database has them, and those that ended on this one. */
@Component
final class JobMeters implements Measured {
    private final DSLContext db;
    private final MeterRegistry meters;
    private final MultiGauge jobs;

    JobMeters(DSLContext db, MeterRegistry meters) {
        this.db = db;
        this.meters = meters;
        jobs = MultiGauge.builder("drylap.jobs")
                .description("jobs of all nodes that wait, run, or failed and are still known")
                .register(meters);
    }

    @Override
    public void measure() {
        var found = db.select(JOB.KIND, JOB.STATE, count())
                .from(JOB)
                .where(JOB.STATE.in(JobStatus.QUEUED.code(), JobStatus.RUNNING.code(), JobStatus.FAILED.code()))
                .groupBy(JOB.KIND, JOB.STATE)
                .fetch();
        jobs.register(
                found.map(row -> MultiGauge.Row.of(Tags.of("kind", row.value1(), "state", row.value2()), row.value3())),
                true);
    }

    /** @param how done or failed */
    void ended(String kind, String how) {
        meters.counter("drylap.jobs.ended", "kind", kind, "how", how).increment();
    }
}
