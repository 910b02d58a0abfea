package drylap.cli;

import drylap.intake.TakeOffWriter;
import drylap.kernel.CrewId;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.takeoff.TakeOff;
import drylap.takeoff.VanList;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "takeoff",
        description = {
            "Takes off what each window crew loads for each day of a plan: strips and how to cut them from rolls, pans, "
                    + "sealant, fasteners, windows. What is on at an opening already is left out.",
            "Sizes are rules (rules.csv), so that a contractor has his own."
        },
        exitCodeListHeading = "%nThe command ends with:%n",
        exitCodeList = {"0:taken off", "2:bad input: the message says where, what, and what is accepted"})
final class TakeOffCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Mixin
    JobOption job = new JobOption();

    @Mixin
    PlanOptions plans = new PlanOptions();

    @Option(names = "--crew", paramLabel = "CREW", description = "Of this crew alone (default: of every window crew).")
    @Nullable
    String crew;

    @Option(names = "--date", paramLabel = "DATE", description = "Of this day alone (default: of every day).")
    @Nullable
    LocalDate date;

    @Option(names = "--out", paramLabel = "DIR", description = "Write the lists there as CSV files.")
    @Nullable
    Path out;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = Objects.requireNonNull(spec).commandLine().getErr();
        Optional<JobFolder> folder = job.read(err);
        if (folder.isEmpty()) return ExitCodes.BAD_INPUT;
        if (!known(folder.get(), err)) return ExitCodes.BAD_INPUT;
        Optional<Plan> read = plans.read(folder.get(), err);
        return read.isEmpty() ? ExitCodes.BAD_INPUT : takeOff(folder.get(), read.get(), err);
    }

    private boolean known(JobFolder folder, PrintWriter err) {
        if (crew == null || folder.crews().stream().anyMatch(one -> one.id().equals(new CrewId(crew)))) return true;
        err.printf("--crew: the job folder has no crew %s; accepted: a crew of crews.csv%n", crew);
        return false;
    }

    private int takeOff(JobFolder folder, Plan read, PrintWriter err) throws IOException {
        List<VanList> days;
        try {
            days = TakeOff.ofPlan(folder, read).stream().filter(this::wanted).toList();
        } catch (IllegalArgumentException tooLong) {
            err.println(tooLong.getMessage());
            return ExitCodes.BAD_INPUT;
        }
        PrintWriter print = Objects.requireNonNull(spec).commandLine().getOut();
        TakeOffText.print(days, print);
        if (out != null) TakeOffWriter.write(days, out);
        print.println(Commands.NOT_A_SAFETY_STATEMENT);
        return ExitCodes.DONE;
    }

    private boolean wanted(VanList day) {
        return (crew == null || day.crew().value().equals(crew))
                && (date == null || day.date().equals(date));
    }
}
