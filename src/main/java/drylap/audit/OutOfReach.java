package drylap.audit;

import drylap.audit.PlanBreaks.Broken;
import drylap.kernel.Reach;
import drylap.planning.Visit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Tells of a breach at a site that is not the reader's only which rule it is, and of the crew that links the two. */
record OutOfReach(Reach reach, List<Visit> plan, Visit moved) {
    private static final String ELSEWHERE = "at a site that is not yours";

    List<Broken> told(List<Broken> all) {
        return all.stream().map(this::told).toList();
    }

    private Broken told(Broken broken) {
        Visit visit = broken.visit();
        Breach breach = broken.breach();
        if (visit == null || !reach.covers(visit.facade().site()))
            return new Broken(null, new Breach(breach.rule(), where(visit), "breaks there; ask who plans that site"));
        if (breach.rule() == ContractRule.ONE_AT_A_TIME && meetsWorkElsewhere(visit))
            return new Broken(visit, new Breach(breach.rule(), breach.where(), "the crew is at work " + ELSEWHERE));
        return broken;
    }

    private static String where(@Nullable Visit visit) {
        return visit == null ? ELSEWHERE : "crew %s, %s".formatted(visit.crew(), ELSEWHERE);
    }

    private boolean meetsWorkElsewhere(Visit visit) {
        return plan.stream()
                .anyMatch(other -> other.crew().equals(visit.crew())
                        && !reach.covers(other.facade().site())
                        && other.start().isBefore(visit.end())
                        && other.end().isAfter(visit.start()));
    }
}
