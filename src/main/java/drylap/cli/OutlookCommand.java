package drylap.cli;

import drylap.climate.MonthlyNormals;
import drylap.intake.SeasonWriter;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.season.Season;
import drylap.season.SeasonRequest;
import drylap.season.SiteOutlook;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
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
        name = "outlook",
        description = {
            "Looks twelve months ahead at each site: hours in which a facade can be worked at, by month and between years, "
                    + "when its work is through in 5, 8 and 9 of 10 years, the chance to keep the due date, and what one "
                    + "more crew changes.",
            "The same seed and number of years give the same figures on any machine."
        },
        exitCodeListHeading = "%nThe command ends with:%n",
        exitCodeList = {"0:reckoned", "2:bad input: the message says where, what, and what is accepted"})
final class OutlookCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Mixin
    JobOption job = new JobOption();

    @Option(
            names = "--climate",
            paramLabel = "FILE",
            description =
                    "Monthly normals: month, rain_mm, rain_days, site where a site has its own, and cold_days and "
                            + "gust_days where they are known (default: the forecasts' own record, or an assumption; "
                            + "which is said).")
    @Nullable
    Path climate;

    @Option(
            names = "--crews",
            paramLabel = "TRADE=N",
            description = "How many crews of a trade work at each site (default: its share of the folder's crews, by "
                    + "the work that is left). May be given once a trade.")
    Map<Trade, Integer> crews = Map.of();

    @Option(
            names = "--years",
            paramLabel = "N",
            defaultValue = "" + SeasonRequest.USUAL_YEARS,
            description = "How many years are drawn (default: " + SeasonRequest.USUAL_YEARS + ").")
    int years;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of chance (default: 1).")
    long seed;

    @Option(names = "--out", paramLabel = "DIR", description = "Write the figures there as CSV files.")
    @Nullable
    Path out;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            description = "The moment from which the work goes on (default: the first shift's start).")
    @Nullable
    OffsetDateTime now;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = command().commandLine().getErr();
        Optional<JobFolder> folder = job.read(err);
        if (folder.isEmpty()) return ExitCodes.BAD_INPUT;
        Optional<List<MonthlyNormals>> normals = new Folders(err).normals(climate, folder.get());
        return normals.isEmpty() ? ExitCodes.BAD_INPUT : reckon(folder.get(), normals.get());
    }

    private int reckon(JobFolder folder, List<MonthlyNormals> normals) throws IOException {
        PrintWriter print = command().commandLine().getOut();
        SeasonRequest request = request(folder, normals);
        List<SiteOutlook> outlooks = folder.sites().stream()
                .map(site -> Season.of(folder, site.id(), request))
                .toList();
        new OutlookText(folder, outlooks).print(print);
        if (out != null) SeasonWriter.write(outlooks, out);
        print.println(Commands.NOT_A_SAFETY_STATEMENT);
        return ExitCodes.DONE;
    }

    private SeasonRequest request(JobFolder folder, List<MonthlyNormals> normals) {
        Instant from = now == null ? folder.firstStart().orElseThrow() : now.toInstant();
        try {
            return new SeasonRequest(from, normals, crews, years, seed);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(command().commandLine(), e.getMessage(), e);
        }
    }

    private CommandSpec command() {
        return Objects.requireNonNull(spec);
    }
}
