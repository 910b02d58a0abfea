package drylap.bench;

import drylap.intake.GeneratedFolder;
import drylap.kernel.Rule;
import drylap.planning.JobFolder;
import drylap.planning.LedgerTerm;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.risk.Risk;
import drylap.risk.RiskReport;
import drylap.risk.RiskReport.Handover;
import drylap.risk.RiskReport.OpeningRisk;
import drylap.risk.RiskRequest;
import java.time.Duration;
import java.util.Locale;
import java.util.Objects;

/**
 * Plans that weigh the odds of rain beside plans that only keep out of hours in which rain is forecast, both replayed in the same
 * trials. The planner sees no trials at all.
 */
final class RobustBench {
    private static final int OPENINGS = 120;
    private static final int JOBS = 5;
    private static final int TRIALS = 2000;
    private static final int USUAL = (int) Rule.WEIGHT_RAIN_RISK.standard();
    /** The first only keeps out of hours in which rain is forecast. */
    private static final int[] WEIGHTS = {0, 1, USUAL, 3, 5, 100};

    /** Any; no plan is made with it. */
    private static final long SEED_OF_TRIALS = 7_001;

    private RobustBench() {}

    /** Prints a row for each job and weight; whether the plans by the odds are rained on less. */
    static boolean run(int seconds) {
        System.out.println(
                "| Seed | Weight of rain | Out | Cost without rain | Rained on while open | Wet | Covers | Crew-days planned | "
                        + "Crew-days that come | Hand-overs in time, of 100 |");
        System.out.println("|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|");
        double plain = 0;
        double byOdds = 0;
        for (long seed = 1; seed <= JOBS; seed++) {
            JobFolder folder = GeneratedFolder.of(OPENINGS, GeneratedFolder.usualSites(OPENINGS), seed);
            for (int weight : WEIGHTS) {
                double rainedOn = row(seed, weight, folder, plan(weighing(folder, weight), seconds));
                if (weight == 0) plain += rainedOn;
                if (weight == USUAL) byOdds += rainedOn;
            }
        }
        return byOdds < plain;
    }

    private static JobFolder weighing(JobFolder folder, int weight) {
        return folder.withRules(folder.rules().with(null, Rule.WEIGHT_RAIN_RISK, weight));
    }

    private static Plan plan(JobFolder folder, int seconds) {
        return Planner.standard()
                .plan(folder, new PlanRequest(null, Duration.ofSeconds(seconds), null, 1), _ -> {}, () -> false);
    }

    private static double row(long seed, int weight, JobFolder folder, Plan plan) {
        RiskReport report = Risk.of(folder, plan, new RiskRequest(TRIALS, SEED_OF_TRIALS));
        RiskReport.Totals totals = Objects.requireNonNull(report.totals());
        double rainedOn = report.openings().stream()
                .map(OpeningRisk::rainedOn)
                .mapToDouble(chance -> chance.value())
                .sum();
        double inTime = report.handovers().stream()
                .map(Handover::inTime)
                .filter(Objects::nonNull)
                .mapToDouble(chance -> 100 * chance.value())
                .average()
                .orElse(Double.NaN);
        System.out.printf(
                Locale.ROOT,
                "| %d | %d | %d | %,d | %.2f | %.2f ± %.2f | %.2f ± %.2f | %d | %.1f ± %.1f | %.0f |%n",
                seed,
                weight,
                plan.unplanned().size(),
                dryCost(plan),
                rainedOn,
                totals.wetOpenings().value(),
                totals.wetOpenings().error(),
                totals.covers().value(),
                totals.covers().error(),
                totals.daysPlanned(),
                totals.daysCome().value(),
                totals.daysCome().error(),
                inTime);
        return rainedOn;
    }

    private static long dryCost(Plan plan) {
        return plan.ledger().lines().stream()
                .filter(line -> line.term() != LedgerTerm.RAIN_RISK)
                .mapToLong(line -> line.cost())
                .sum();
    }
}
