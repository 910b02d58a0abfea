package drylap.cli;

import drylap.intake.PlanWriter;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "plan",
        description =
                "Plans a job folder: which crew goes where on which day, so that no opening is left with unfinished "
                        + "laps or open to rain. Reads the folder's CSV files, writes visits, unplanned tasks, openings to cover now, "
                        + "open hours and the ledger of costs as CSV files. Ends with 0 when there is a plan, 2 when the input is "
                        + "refused, 3 when nothing could be planned.")
final class PlanCommand implements Callable<Integer> {
    private static final long STANDARD_SECONDS = 10;

    @Spec
    @Nullable
    CommandSpec spec;

    @Option(names = "--in", required = true, paramLabel = "FOLDER", description = "The job folder, or a zip of one.")
    @Nullable
    Path in;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Where the plan's files go.")
    @Nullable
    Path out;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "How long to look for a better plan (default: " + STANDARD_SECONDS
                    + ", or no limit when --moves is given).")
    @Nullable
    Long seconds;

    @Option(
            names = "--moves",
            paramLabel = "N",
            description = "How many changes to try. The same folder, seed and number of moves give the same plan.")
    @Nullable
    Long moves;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of chance (default: 1).")
    long seed;

    @Option(
            names = "--from",
            paramLabel = "PLAN",
            description = "The plan that people have: its folder or its visits.csv. What differs from it costs; pinned "
                    + "visits stay.")
    @Nullable
    Path from;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            description =
                    "Plan from this moment on, such as 2026-04-13T07:00-07:00 (default: the first shift's start).")
    @Nullable
    OffsetDateTime now;

    @Override
    public Integer call() throws IOException {
        PlanRequest request = request();
        PrintWriter err = command().commandLine().getErr();
        Folders folders = new Folders(err);
        Optional<JobFolder> job = folders.job(Objects.requireNonNull(in));
        if (job.isEmpty()) return ExitCodes.BAD_INPUT;
        JobFolder folder = job.get();
        if (from != null) {
            var published = folders.published(from, folder);
            if (published.isEmpty()) return ExitCodes.BAD_INPUT;
            folder = folder.withPublished(published.get());
        }
        return planned(folder, request, err);
    }

    private int planned(JobFolder folder, PlanRequest request, PrintWriter err) throws IOException {
        Plan plan;
        try (ProgressLine progress = new ProgressLine(err, request)) {
            plan = Planner.standard().plan(folder, request, progress, () -> false);
        }
        PlanWriter.write(plan, folder, Objects.requireNonNull(out));
        PlanSummary.print(plan, folder, out, command().commandLine().getOut());
        boolean nothing = plan.visits().isEmpty() && !plan.unplanned().isEmpty();
        return nothing ? ExitCodes.NOTHING_PLANNED : ExitCodes.DONE;
    }

    private PlanRequest request() {
        notNegative("--seconds", seconds);
        notNegative("--moves", moves);
        Long limit = seconds == null && moves == null ? Long.valueOf(STANDARD_SECONDS) : seconds;
        return new PlanRequest(
                now == null ? null : now.toInstant(), limit == null ? null : Duration.ofSeconds(limit), moves, seed);
    }

    private void notNegative(String option, @Nullable Long value) {
        if (value != null && value < 0)
            throw new ParameterException(
                    command().commandLine(), "%s is %d; accepted: 0 or more".formatted(option, value));
    }

    private CommandSpec command() {
        return Objects.requireNonNull(spec);
    }
}
