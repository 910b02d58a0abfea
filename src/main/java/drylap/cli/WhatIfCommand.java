package drylap.cli;

import drylap.intake.ScenarioReader;
import drylap.intake.ScenarioReading;
import drylap.planning.JobFolder;
import drylap.planning.PlanRequest;
import drylap.whatif.Scenario;
import drylap.whatif.WhatIf;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
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
        name = "whatif",
        description = {
            "Plans scenarios beside the job folder as it is, each with the same budget and seed, and compares what "
                    + "comes of them. The folder and its plans are not touched.",
            "A scenario is one or more rows of a CSV file, one change a row: add crew, drop day, delay delivery, rain, "
                    + "no rain, rain by percent, forecast."
        },
        exitCodeListHeading = "%nThe command ends with:%n",
        exitCodeList = {"0:compared", "2:bad input: the message says where, what, and what is accepted"})
final class WhatIfCommand implements Callable<Integer> {
    private static final long STANDARD_SECONDS = 10;

    @Spec
    @Nullable
    CommandSpec spec;

    @Option(names = "--jobs", required = true, paramLabel = "DIR", description = "The job folder, or a zip of it.")
    @Nullable
    Path jobs;

    @Option(names = "--scenarios", required = true, paramLabel = "FILE", description = "The scenarios.")
    @Nullable
    Path scenarios;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "How long to look for a better plan of each (default: " + STANDARD_SECONDS
                    + ", or no limit when --moves is given).")
    @Nullable
    Long seconds;

    @Option(names = "--moves", paramLabel = "N", description = "How many changes of a plan to try for each.")
    @Nullable
    Long moves;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of chance (default: 1).")
    long seed;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            description = "Plan from this moment on (default: the folder's first shift's start).")
    @Nullable
    OffsetDateTime now;

    @Override
    public Integer call() {
        PlanRequest request = request();
        PrintWriter err = command().commandLine().getErr();
        Optional<JobFolder> folder = new Folders(err).job(Objects.requireNonNull(jobs));
        if (folder.isEmpty()) return ExitCodes.BAD_INPUT;
        return switch (ScenarioReader.read(Objects.requireNonNull(scenarios), folder.get())) {
            case ScenarioReading.Refused refused -> {
                err.println(refused.text());
                yield ExitCodes.BAD_INPUT;
            }
            case ScenarioReading.Read(List<Scenario> read) -> compare(folder.get(), read, request);
        };
    }

    private int compare(JobFolder folder, List<Scenario> read, PlanRequest request) {
        PrintWriter out = command().commandLine().getOut();
        new OutcomeTable(WhatIf.compare(folder, read, request, () -> false)).print(out);
        out.println(Commands.NOT_A_SAFETY_STATEMENT);
        return ExitCodes.DONE;
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
