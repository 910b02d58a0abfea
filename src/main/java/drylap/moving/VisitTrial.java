package drylap.moving;

import drylap.audit.MoveJudge;
import drylap.audit.MoveVerdict;
import drylap.kernel.CrewId;
import drylap.kernel.Reach;
import drylap.planning.Plan;
import drylap.planning.Visit;
import java.time.Instant;

/** Tries a visit at one place after the other, as things stood when it was begun; nothing is saved by it. */
public final class VisitTrial {
    private final MoveJudge judge;
    private final Plan plan;
    private final Reach reach;

    VisitTrial(MoveJudge judge, Plan plan, Reach reach) {
        this.judge = judge;
        this.plan = plan;
        this.reach = reach;
    }

    public Visit visit() {
        return judge.visit();
    }

    public MoveVerdict at(CrewId crew, Instant start) {
        return judge.judge(crew, start).within(reach, plan.visits());
    }
}
