package drylap.bench;

import drylap.audit.Audit;
import drylap.audit.ClaimedPlan;
import drylap.bench.BestKnown.Cost;
import drylap.bench.BestKnown.Job;
import drylap.intake.GeneratedFolder;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanProgress;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.solver.JobShopBench;
import drylap.planning.solver.ReplanBench;
import drylap.risk.RiskRequest;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * Plans generated jobs of several sizes, three seeds each, and prints one row for each size and time: medians of the seeds.
 * {@code PlannerBench [quick | import | jobshop | reference | risk [TRIALS] | [full] SIZES SECONDS]}, lists with commas; full draws the costs over time, too. Plans of up to 3,000 openings go through the audit. The gap is to
 * the best plan ever found of the same job, which {@code src/docs/best-known.csv} keeps.
 */
public final class PlannerBench {
    private static final long[] SEEDS = {1, 2, 3};
    private static final int AUDITED_UP_TO = 3_000;
    private static final Path CURVES = Path.of("src/docs/pictures/cost-over-time.svg");
    private static final double MEBI = 1 << 20;

    private record Row(int openings, int seconds, List<Run> runs) {}

    private record Run(
            Job job, Cost cost, double movesPerSecond, double firstMs, double heapMb, List<PlanProgress> seen) {}

    private final BestKnown best = BestKnown.read(Path.of("src/docs/best-known.csv"));
    private final List<Row> rows = new ArrayList<>();
    private final List<CostCurve.Line> curves = new ArrayList<>();
    /** Of the seed that came furthest down, at the size and time of the last row. */
    private List<PlanProgress> lastCurve = List.of();

    private static final int WARM_FIRST_PLANS = 12;

    private boolean broken;

    private PlannerBench() {}

    public static void main(String[] args) {
        String kind = args.length == 0 ? "" : args[0];
        boolean fine = switch (kind) {
            case "jobshop" -> JobShopBench.run();
            case "jmh" -> JmhBench.run(args.length > 1 ? args[1] : "drylap\\..*Benchmark");
            case "replan" -> ReplanBench.run();
            case "reference" -> ReferenceBench.run(10, 60);
            case "import" -> ImportBench.run();
            case "robust" -> RobustBench.run(10);
            case "papers" -> PapersBench.run();
            case "risk" -> RiskBench.run(args.length > 1 ? Integer.parseInt(args[1]) : RiskRequest.USUAL_TRIALS);
            default -> rows(args);
        };
        System.exit(fine ? 0 : 1);
    }

    private static boolean rows(String[] args) {
        boolean quick = args.length == 1 && args[0].equals("quick");
        boolean full = args.length > 0 && args[0].equals("full");
        int at = full ? 1 : 0;
        List<Integer> sizes = quick ? List.of(8, 30, 300) : list(args, at, List.of(8, 30, 300, 3_000, 20_000));
        List<Integer> seconds = quick ? List.of(1) : list(args, at + 1, List.of(1, 10, 60));
        PlannerBench bench = new PlannerBench();
        bench.warmUp();
        printHead();
        for (int size : sizes) {
            for (int time : seconds) bench.row(size, time);
            bench.curves.add(new CostCurve.Line("%,d openings".formatted(size), bench.lastCurve));
        }
        if (full) CostCurve.write(CURVES, bench.curves);
        bench.printAgain();
        return !bench.broken;
    }

    private static void printHead() {
        System.out.println("| Openings | Seconds | Medium | Soft | Gap | Moves/s | First plan, ms | Peak heap, MB |");
        System.out.println("|---:|---:|---:|---:|---:|---:|---:|---:|");
    }

    /** A later row may have found better than an earlier one was compared with. */
    private void printAgain() {
        System.out.println("\nThe same, with gaps to the best that is known after all of these rows:\n");
        printHead();
        rows.forEach(this::print);
    }

    private static List<Integer> list(String[] args, int place, List<Integer> usual) {
        if (args.length <= place) return usual;
        return Arrays.stream(args[place].split(",")).map(Integer::valueOf).toList();
    }

    /** On other jobs, so that days of sun are reckoned in it, too. */
    private void warmUp() {
        for (int openings : new int[] {300, 3_000}) plan(job(openings, 99), 3, new ArrayList<>());
        for (int again = 0; again < WARM_FIRST_PLANS; again++) plan(job(3_000, 100 + again), 0, new ArrayList<>());
    }

    private static JobFolder job(int openings, long seed) {
        return GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), seed);
    }

    private static Plan plan(JobFolder folder, long seconds, List<PlanProgress> seen) {
        return Planner.standard().plan(folder, PlanRequest.seconds(seconds), seen::add, () -> false);
    }

    private void row(int openings, int seconds) {
        List<Run> runs = Arrays.stream(SEEDS)
                .mapToObj(seed -> run(new Job(openings, seed), seconds))
                .toList();
        lastCurve = runs.stream()
                .min(Comparator.comparingLong((Run run) -> run.cost().medium())
                        .thenComparingLong(run -> run.cost().soft()))
                .orElseThrow()
                .seen();
        Row row = new Row(openings, seconds, runs);
        rows.add(row);
        print(row);
    }

    private void print(Row row) {
        List<Run> runs = row.runs();
        System.out.printf(
                Locale.ROOT,
                "| %,d | %d | %,.0f | %,.0f | %.1f %% | %,.0f | %.0f | %.0f |%n",
                row.openings(),
                row.seconds(),
                median(runs, run -> run.cost().medium()),
                median(runs, run -> run.cost().soft()),
                median(runs, this::gap),
                median(runs, Run::movesPerSecond),
                median(runs, Run::firstMs),
                median(runs, Run::heapMb));
    }

    private Run run(Job job, int seconds) {
        JobFolder folder = job(job.openings(), job.seed());
        System.gc();
        List<MemoryPoolMXBean> heap = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
        heap.forEach(MemoryPoolMXBean::resetPeakUsage);
        List<PlanProgress> seen = new ArrayList<>();
        Plan plan = plan(folder, seconds, seen);
        double peak =
                heap.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() / MEBI;
        if (job.openings() <= AUDITED_UP_TO) audit(folder, plan, job);
        Cost cost = new Cost(plan.ledger().medium(), plan.ledger().soft());
        best.offer(job, cost);
        PlanProgress last = seen.getLast();
        return new Run(
                job,
                cost,
                last.moves() / seconds(last),
                seen.getFirst().elapsed().toNanos() / 1e6,
                peak,
                seen);
    }

    private static double seconds(PlanProgress progress) {
        return Math.max(1, progress.elapsed().toMillis()) / 1_000.0;
    }

    private void audit(JobFolder folder, Plan plan, Job job) {
        var breaches = Audit.of(folder, ClaimedPlan.of(plan), null).breaches();
        if (breaches.isEmpty()) return;
        broken = true;
        System.out.printf("The plan of %s breaks rules: %s%n", job, breaches);
    }

    /** Percent above the best known soft cost; not a number while its medium cost is not reached. */
    private double gap(Run run) {
        Cost known = best.of(run.job()).orElse(run.cost());
        if (run.cost().medium() > known.medium()) return Double.NaN;
        return 100 * (run.cost().soft() - known.soft()) / Math.max(1.0, known.soft());
    }

    private static double median(List<Run> runs, ToDoubleFunction<Run> number) {
        double[] sorted = runs.stream().mapToDouble(number).sorted().toArray();
        return sorted[sorted.length / 2];
    }
}
