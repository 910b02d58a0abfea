package drylap.bench;

import drylap.audit.Audit;
import drylap.audit.AuditReport;
import drylap.audit.ClaimedPlan;
import drylap.bench.ExactSolver.Result;
import drylap.intake.GeneratedFolder;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Visit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The planner beside a general constraint solver, OR-tools CP-SAT, which is given more time and the planner's first plan. */
final class ReferenceBench {
    private ReferenceBench() {}

    /** Prints one row for each size and seed; whether every plan was legal. */
    static boolean run(int ourSeconds, int itsSeconds) {
        System.out.printf(
                "| Openings | Seed | Drylap, %d s | CP-SAT, %d s | Its bound | Proved |%n|---:|---:|---:|---:|---:|---|%n",
                ourSeconds, itsSeconds);
        boolean legal = true;
        for (int openings : new int[] {8, 30})
            for (long seed = 1; seed <= 3; seed++) legal &= row(openings, seed, ourSeconds, itsSeconds);
        return legal;
    }

    private static boolean row(int openings, long seed, int ourSeconds, int itsSeconds) {
        JobFolder folder = GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), seed);
        Plan ours = plan(folder, PlanRequest.seconds(ourSeconds));
        ExactModel exact = ExactSolver.model(folder);
        exact.beginAt(plan(folder, new PlanRequest(null, null, 0L, 1)).visits());
        Optional<Result> its = ExactSolver.solve(exact, itsSeconds);
        Optional<AuditReport> report = its.map(result -> audit(folder, result.visits()));
        System.out.printf(
                Locale.ROOT,
                "| %d | %d | %s | %s | %s | %s |%n",
                openings,
                seed,
                cost(ours.ledger().medium(), ours.ledger().soft()),
                report.map(one -> cost(one.ledger().medium(), one.ledger().soft()))
                        .orElse("none"),
                its.map(result -> "%,d".formatted(result.bound())).orElse(""),
                its.map(result -> result.proved() ? "yes" : "no").orElse(""));
        report.map(AuditReport::breaches).filter(all -> !all.isEmpty()).ifPresent(System.out::println);
        return report.map(AuditReport::clean).orElse(true);
    }

    private static String cost(long medium, long soft) {
        return medium == 0 ? "%,d".formatted(soft) : "%,d and %,d left out".formatted(soft, medium);
    }

    static AuditReport audit(JobFolder folder, List<Visit> visits) {
        return Audit.of(folder, new ClaimedPlan(visits, List.of(), null, null, null), null);
    }

    static Plan plan(JobFolder folder, PlanRequest request) {
        return Planner.standard().plan(folder, request, _ -> {}, () -> false);
    }
}
