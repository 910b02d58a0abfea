package drylap.bench;

import drylap.intake.FolderReader;
import drylap.intake.FolderReading;
import drylap.intake.FolderSource;
import drylap.intake.GeneratedFolder;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.risk.Risk;
import drylap.risk.RiskRequest;
import java.nio.file.Path;
import java.util.Locale;

/**
 * How long it takes to reckon the odds of first plans, on all processors: the sample week, then generated jobs of growing size.
 * Each is reckoned twice, and the second time told. Were it not linear, the last column would grow from row to row.
 */
final class RiskBench {
    private static final int[] OPENINGS = {30, 120, 300, 1_000, 3_000};
    private static final String ROW = "| %s | %,d | %,d | %,d | %.2f | %.2f | %.2f |%n";

    private RiskBench() {}

    static boolean run(int trials) {
        System.out.println(
                "| Job | Openings | Visits | Trials | First time, s | Second, s | µs an opening and trial |");
        System.out.println("|---|---:|---:|---:|---:|---:|---:|");
        measure("sample week", week(), trials);
        for (int openings : OPENINGS)
            measure("generated", GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), 1), trials);
        return true;
    }

    private static JobFolder week() {
        return switch (FolderReader.read(FolderSource.of(Path.of("sample-data/harbour-week")))) {
            case FolderReading.Read read -> read.folder();
            case FolderReading.Refused refused -> throw new IllegalStateException(refused.text());
        };
    }

    private static void measure(String name, JobFolder folder, int trials) {
        Plan plan = Planner.standard().plan(folder, new PlanRequest(null, null, 0L, 1), _ -> {}, () -> true);
        double first = seconds(folder, plan, trials);
        double second = seconds(folder, plan, trials);
        int openings = folder.openings().size();
        System.out.printf(
                Locale.ROOT,
                ROW,
                name,
                openings,
                plan.visits().size(),
                trials,
                first,
                second,
                second * 1e6 / trials / openings);
    }

    private static double seconds(JobFolder folder, Plan plan, int trials) {
        long begun = System.nanoTime();
        Risk.of(folder, plan, new RiskRequest(trials, 1));
        return (System.nanoTime() - begun) / 1e9;
    }
}
