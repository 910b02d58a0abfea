package drylap.cli;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.Explainer;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "explain",
        description = {
            "Says why a visit of a plan is there and then, and what it would cost to move it; of a task that is left "
                    + "out, what would plan it. Costs are found by planning again, not guessed."
        },
        exitCodeListHeading = "%nThe command ends with:%n",
        exitCodeList = {"0:explained", "2:bad input: the message says where, what, and what is accepted"})
final class ExplainCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Option(names = "--jobs", required = true, paramLabel = "DIR", description = "The job folder, or a zip of it.")
    @Nullable
    Path jobs;

    @Mixin
    PlanOptions plans = new PlanOptions();

    @Parameters(index = "0", paramLabel = "OPENING", description = "The opening's id.")
    @Nullable
    String opening;

    @Parameters(index = "1", paramLabel = "TASK", description = "install, test, wrap or clad.")
    @Nullable
    Task task;

    @Override
    public Integer call() {
        PrintWriter err = command().commandLine().getErr();
        Optional<JobFolder> folder = new Folders(err).job(Objects.requireNonNull(jobs));
        if (folder.isEmpty()) return ExitCodes.BAD_INPUT;
        return plans.read(folder.get(), err)
                .map(read -> explain(folder.get(), read))
                .orElse(ExitCodes.BAD_INPUT);
    }

    private int explain(JobFolder folder, Plan read) {
        PrintWriter out = command().commandLine().getOut();
        OpeningId id = new OpeningId(Objects.requireNonNull(opening));
        Task what = Objects.requireNonNull(task);
        Explainer explainer = Explainer.standard();
        ExplainText text = new ExplainText(folder, out);
        var why = explainer.why(folder, read, id, what);
        if (why.isPresent()) {
            text.why(why.get());
            text.moves(explainer.moves(folder, read, id, what, null));
        } else {
            var remedy = explainer.remedy(folder, read, id, what, null);
            if (remedy.isEmpty()) return refuse(id, what);
            text.remedy(remedy.get());
        }
        out.println(Commands.NOT_A_SAFETY_STATEMENT);
        return ExitCodes.DONE;
    }

    private int refuse(OpeningId id, Task what) {
        command()
                .commandLine()
                .getErr()
                .printf(
                        "The plan neither has nor leaves out the %s of %s; accepted: a row of visits.csv or unplanned.csv%n",
                        what.code(), id);
        return ExitCodes.BAD_INPUT;
    }

    private CommandSpec command() {
        return Objects.requireNonNull(spec);
    }
}
