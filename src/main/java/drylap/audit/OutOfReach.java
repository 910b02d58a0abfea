package drylap.audit;

import drylap.audit.PlanBreaks.Broken;
import drylap.kernel.Reach;
import drylap.planning.Visit;
import drylap.speech.Saying;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Tells of a breach at a site that is not the reader's only which rule it is, and of the crew that links the two. */
record OutOfReach(Reach reach, List<Visit> plan, Visit moved) {
    List<Broken> told(List<Broken> all) {
        return all.stream().map(this::told).toList();
    }

    private Broken told(Broken broken) {
        Visit visit = broken.visit();
        Breach breach = broken.breach();
        if (visit == null || !reach.covers(visit.facade().site()))
            return new Broken(
                    null, new Breach(breach.rule(), where(visit), Saying.of("breaks there; ask who plans that site")));
        if (breach.rule() == ContractRule.ONE_AT_A_TIME && meetsWorkElsewhere(visit))
            return new Broken(
                    visit,
                    new Breach(
                            breach.rule(),
                            breach.where(),
                            Saying.of("the crew is at work at a site that is not yours")));
        return broken;
    }

    private static Saying where(@Nullable Visit visit) {
        return visit == null
                ? Saying.of("at a site that is not yours")
                : Saying.of("crew {0}, at a site that is not yours", visit.crew());
    }

    private boolean meetsWorkElsewhere(Visit visit) {
        return plan.stream()
                .anyMatch(other -> other.crew().equals(visit.crew())
                        && !reach.covers(other.facade().site())
                        && other.start().isBefore(visit.end())
                        && other.end().isAfter(visit.start()));
    }
}
