package drylap.cli;

import drylap.audit.Audit;
import drylap.audit.AuditReport;
import drylap.audit.ClaimedPlan;
import drylap.intake.FolderSource;
import drylap.intake.PlanFolder;
import drylap.intake.PlanReader;
import drylap.intake.PlanReading;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PublishedVisit;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a plan folder back as a plan; its costs are the audit's, not its own claims. */
final class PlansAtHand {
    private final PrintWriter err;

    PlansAtHand(PrintWriter err) {
        this.err = err;
    }

    /** Nothing where it is refused; why is printed. */
    Optional<Plan> read(Path path, JobFolder folder, @Nullable Instant now) {
        return switch (PlanReader.read(FolderSource.of(path), folder)) {
            case PlanReading.Refused<PlanFolder> refused -> refuse(refused.text());
            case PlanReading.Read<PlanFolder> read -> audited(read.plan(), folder, now);
        };
    }

    private Optional<Plan> audited(PlanFolder claimed, JobFolder folder, @Nullable Instant now) {
        List<Visit> visits =
                claimed.visits().stream().map(PublishedVisit::visit).toList();
        List<UnplannedTask> left = claimed.unplanned() == null ? List.of() : claimed.unplanned();
        AuditReport report =
                Audit.of(folder, new ClaimedPlan(visits, ClaimedPlan.unplanned(left), null, null, null), now);
        if (!report.clean())
            return refuse(report.breaches().getFirst()
                    + "\nA plan that breaks no rule is accepted; drylap check names every breach of this one.");
        return Optional.of(new Plan(
                report.start(),
                folder.lastLimit().orElseThrow(),
                visits,
                left,
                report.coverNow(),
                List.of(),
                report.ledger()));
    }

    private Optional<Plan> refuse(String problems) {
        err.println(problems);
        return Optional.empty();
    }
}
