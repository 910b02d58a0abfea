package drylap.planning;

import static drylap.persistence.jooq.Tables.JOB;
import static drylap.persistence.jooq.Tables.PLANNING_RUN;

import drylap.security.Operation;
import drylap.security.Person;
import java.time.Instant;
import java.util.Optional;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;

/** How the planner does, for whoever looks after the machine: speed and result, and nothing of what was planned. */
@Service
public final class EndedRuns {
    private final DSLContext db;

    EndedRuns(DSLContext db) {
        this.db = db;
    }

    public record Ended(Instant at, PlanProgress progress) {}

    /** The run that ended last, on whichever node. */
    public Optional<Ended> last(Person who) {
        who.demand(Operation.SEE_MACHINE);
        return db.select(PLANNING_RUN, JOB.ENDED_AT)
                .from(PLANNING_RUN)
                .join(JOB)
                .on(JOB.ID.eq(PLANNING_RUN.JOB_ID))
                .where(JOB.ENDED_AT.isNotNull())
                .orderBy(JOB.ENDED_AT.desc())
                .limit(1)
                .fetchOptional(row -> new Ended(row.value2(), PlanningRuns.progress(row.value1())));
    }
}
