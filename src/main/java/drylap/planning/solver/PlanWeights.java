package drylap.planning.solver;

import drylap.planning.LedgerTerm;
import org.jspecify.annotations.NullUnmarked;
import org.optaplanner.core.api.domain.constraintweight.ConstraintConfiguration;
import org.optaplanner.core.api.domain.constraintweight.ConstraintWeight;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** The ledger's weights as the constraint streams want them. */
@NullUnmarked
@ConstraintConfiguration(constraintPackage = PlanWeights.PACKAGE)
public class PlanWeights {
    static final String PACKAGE = "drylap";
    static final String LATE_HANDOVER = "Facade handed over late";
    static final String CREW_DAYS = "Crew comes out for a day";
    static final String TRAVEL = "Crew is on the road";
    static final String SETUP = "Crew sets up";
    static final String OVERTIME = "Crew is back after its shift";
    static final String OPEN_COURSE = "Course stays half installed";
    static final String RAIN_RISK = "Rain may fall into an open opening";
    static final String CHANGED = "Visit differs from the published plan";

    @ConstraintWeight(LATE_HANDOVER)
    private HardMediumSoftLongScore lateHandover;

    @ConstraintWeight(CREW_DAYS)
    private HardMediumSoftLongScore crewDays;

    @ConstraintWeight(TRAVEL)
    private HardMediumSoftLongScore travel;

    @ConstraintWeight(SETUP)
    private HardMediumSoftLongScore setup;

    @ConstraintWeight(OVERTIME)
    private HardMediumSoftLongScore overtime;

    @ConstraintWeight(OPEN_COURSE)
    private HardMediumSoftLongScore openCourse;

    @ConstraintWeight(RAIN_RISK)
    private HardMediumSoftLongScore rainRisk;

    @ConstraintWeight(CHANGED)
    private HardMediumSoftLongScore changed;

    static PlanWeights of(Problem problem) {
        PlanWeights weights = new PlanWeights();
        weights.lateHandover = soft(problem, LedgerTerm.LATE_HANDOVER);
        weights.crewDays = soft(problem, LedgerTerm.CREW_DAYS);
        weights.travel = soft(problem, LedgerTerm.TRAVEL);
        weights.setup = soft(problem, LedgerTerm.SETUP);
        weights.overtime = soft(problem, LedgerTerm.OVERTIME);
        weights.openCourse = soft(problem, LedgerTerm.OPEN_COURSE);
        weights.rainRisk = soft(problem, LedgerTerm.RAIN_RISK);
        weights.changed = soft(problem, LedgerTerm.CHANGED);
        return weights;
    }

    private static HardMediumSoftLongScore soft(Problem problem, LedgerTerm term) {
        return HardMediumSoftLongScore.ofSoft(problem.weight(term));
    }
}
