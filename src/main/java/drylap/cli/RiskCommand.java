package drylap.cli;

import drylap.climate.MonthlyNormals;
import drylap.intake.RiskWriter;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.risk.Risk;
import drylap.risk.RiskReport;
import drylap.risk.RiskRequest;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "risk",
        description = {
            "Replays a plan under drawn weather, durations and deliveries, and says when each facade is handed over in "
                    + "5, 8 and 9 cases of 10, which openings rain catches, and which days drive that.",
            "The same seed and number of trials give the same figures on any machine."
        },
        exitCodeListHeading = "%nThe command ends with:%n",
        exitCodeList = {"0:reckoned", "2:bad input: the message says where, what, and what is accepted"})
final class RiskCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Mixin
    JobOption job = new JobOption();

    @Mixin
    PlanOptions plans = new PlanOptions();

    @Option(
            names = "--trials",
            paramLabel = "N",
            defaultValue = "" + RiskRequest.USUAL_TRIALS,
            description = "How often the plan is replayed (default: " + RiskRequest.USUAL_TRIALS + ").")
    int trials;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of chance (default: 1).")
    long seed;

    @Option(
            names = "--climate",
            paramLabel = "FILE",
            description =
                    "Monthly normals for the days beyond the forecast: month, rain_mm, rain_days, and site where a "
                            + "site has its own (default: the forecasts' own record, or an assumption; which is said).")
    @Nullable
    Path climate;

    @Option(names = "--out", paramLabel = "DIR", description = "Write the figures there as CSV files.")
    @Nullable
    Path out;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = command().commandLine().getErr();
        Optional<JobFolder> folder = job.read(err);
        if (folder.isEmpty()) return ExitCodes.BAD_INPUT;
        Optional<Plan> read = plans.read(folder.get(), err);
        if (read.isEmpty()) return ExitCodes.BAD_INPUT;
        Optional<List<MonthlyNormals>> normals = new Folders(err).normals(climate, folder.get());
        return normals.isEmpty() ? ExitCodes.BAD_INPUT : reckon(folder.get(), read.get(), normals.get());
    }

    private int reckon(JobFolder folder, Plan read, List<MonthlyNormals> normals) throws IOException {
        PrintWriter print = command().commandLine().getOut();
        RiskReport report = Risk.of(folder, read, request(normals));
        new RiskText(folder, report).print(print);
        if (out != null) RiskWriter.write(report, folder, out);
        print.println(Commands.NOT_A_SAFETY_STATEMENT);
        return ExitCodes.DONE;
    }

    private RiskRequest request(List<MonthlyNormals> normals) {
        try {
            return new RiskRequest(trials, seed, null, normals);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(command().commandLine(), "--trials: " + e.getMessage(), e);
        }
    }

    private CommandSpec command() {
        return Objects.requireNonNull(spec);
    }
}
