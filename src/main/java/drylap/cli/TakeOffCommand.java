package drylap.cli;

import drylap.intake.TakeOffWriter;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.takeoff.DayList;
import drylap.takeoff.Extent;
import drylap.takeoff.SiteList;
import drylap.takeoff.TakeOff;
import drylap.takeoff.VanList;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "takeoff",
        description = {
            "Takes off what window crews load for the days of a plan, or what a site takes: strips and how to cut them from "
                    + "rolls, pans, sealant, fasteners, windows. What is on at an opening already is left out.",
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

    @ArgGroup(multiplicity = "1")
    TakeOffOf of = new TakeOffOf();

    @Option(names = "--out", paramLabel = "DIR", description = "Write the lists there as CSV files.")
    @Nullable
    Path out;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = Objects.requireNonNull(spec).commandLine().getErr();
        Optional<JobFolder> folder = job.read(err);
        if (folder.isEmpty()) return ExitCodes.BAD_INPUT;
        if (of.site != null) return site(folder.get(), of.site, err);
        return days(folder.get(), Objects.requireNonNull(of.days), err);
    }

    private int site(JobFolder folder, TakeOffOf.OneSite asked, PrintWriter err) throws IOException {
        SiteId id = new SiteId(Objects.requireNonNull(asked.site));
        if (folder.sites().stream().noneMatch(site -> site.id().equals(id))) {
            err.printf("--site: the job folder has no site %s; accepted: a site of sites.csv%n", id);
            return ExitCodes.BAD_INPUT;
        }
        SiteList site = TakeOff.ofSite(folder, id, asked.whole ? Extent.WHOLE : Extent.LEFT);
        text().print(site);
        if (out != null) TakeOffWriter.site(site, out);
        return done();
    }

    private int days(JobFolder folder, TakeOffOf.Days asked, PrintWriter err) throws IOException {
        if (!known(folder, asked, err)) return ExitCodes.BAD_INPUT;
        Optional<Plan> plan = asked.read(folder, err);
        if (plan.isEmpty()) return ExitCodes.BAD_INPUT;
        try {
            if (asked.together) together(folder, plan.get(), asked);
            else vans(folder, plan.get(), asked);
        } catch (IllegalArgumentException unknown) {
            err.println(unknown.getMessage());
            return ExitCodes.BAD_INPUT;
        }
        return done();
    }

    private static boolean known(JobFolder folder, TakeOffOf.Days asked, PrintWriter err) {
        if (asked.crew == null) return true;
        if (asked.together) {
            err.println("--together is of all crews; accepted: it, or --crew");
            return false;
        }
        CrewId crew = new CrewId(asked.crew);
        if (folder.crews().stream().anyMatch(one -> one.id().equals(crew))) return true;
        err.printf("--crew: the job folder has no crew %s; accepted: a crew of crews.csv%n", crew);
        return false;
    }

    private void vans(JobFolder folder, Plan plan, TakeOffOf.Days asked) throws IOException {
        List<VanList> vans = TakeOff.ofPlan(
                folder,
                plan,
                visit -> (asked.crew == null || visit.crew().value().equals(asked.crew))
                        && (asked.date == null || visit.date().equals(asked.date)));
        text().vans(vans);
        if (out != null) TakeOffWriter.vans(vans, out);
    }

    private void together(JobFolder folder, Plan plan, TakeOffOf.Days asked) throws IOException {
        List<DayList> days = TakeOff.ofDates(folder, plan, date -> asked.date == null || date.equals(asked.date));
        text().days(days);
        if (out != null) TakeOffWriter.days(days, out);
    }

    private TakeOffText text() {
        return new TakeOffText(Objects.requireNonNull(spec).commandLine().getOut());
    }

    private int done() {
        Objects.requireNonNull(spec).commandLine().getOut().println(Commands.NOT_A_SAFETY_STATEMENT);
        return ExitCodes.DONE;
    }
}
