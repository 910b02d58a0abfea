package drylap.cli;

import drylap.intake.FolderWriter;
import drylap.intake.Problem;
import drylap.kernel.OpeningId;
import drylap.kernel.SiteId;
import drylap.planning.JobFolder;
import drylap.sites.Opening;
import drylap.windowschedule.Draft;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.OpeningOutcome.Kind;
import drylap.windowschedule.Outcome;
import drylap.windowschedule.Outcomes;
import drylap.windowschedule.ScheduleFiles;
import drylap.windowschedule.Takings;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "openings",
        description = {
            "Takes the openings of a contractor's window schedule (XLSX or CSV) or of a building model (IFC) into a site of a job folder: new ones are added, those "
                    + "that are there are changed where the schedule says otherwise, and none is taken away.",
            "All of it is taken in, or nothing: what is wrong is listed by row and column."
        },
        exitCodeListHeading = "%nThe command ends with:%n",
        exitCodeList = {
            "0:taken in",
            "2:bad input, nothing was written: the message says where, what, and what is accepted"
        })
final class OpeningsCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Option(
            names = "--schedule",
            required = true,
            paramLabel = "FILE",
            description = "The window schedule, or the building model; told by what is in it.")
    @Nullable
    Path schedule;

    @Mixin
    JobOption job = new JobOption();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "Where the job folder with the openings is written.")
    @Nullable
    Path out;

    @Option(names = "--site", required = true, paramLabel = "SITE", description = "The site that they belong to.")
    @Nullable
    String site;

    @Mixin
    ScheduleOptions options = new ScheduleOptions();

    @Override
    public Integer call() throws IOException {
        PrintWriter err = Objects.requireNonNull(spec).commandLine().getErr();
        Optional<JobFolder> folder = job.read(err);
        if (folder.isEmpty()) return ExitCodes.BAD_INPUT;
        SiteId at = new SiteId(Objects.requireNonNull(site));
        if (folder.get().sites().stream().noneMatch(one -> one.id().equals(at)))
            return refuse(err, "--site: the job folder has no site %s; accepted: a site of sites.csv".formatted(at));
        return switch (ScheduleFiles.read(name(), Files.readAllBytes(Objects.requireNonNull(schedule)))) {
            case FileReading.Refused refused -> refuse(err, refused.text());
            case FileReading.Read read -> take(folder.get(), at, read, err);
        };
    }

    private String name() {
        return Objects.requireNonNull(schedule).getFileName().toString();
    }

    private int take(JobFolder folder, SiteId at, FileReading.Read read, PrintWriter err) throws IOException {
        Draft draft;
        try {
            draft = options.draft(folder, at, read);
        } catch (IllegalArgumentException wrong) {
            return refuse(err, String.valueOf(wrong.getMessage()));
        }
        read.understood().forEach(Objects.requireNonNull(spec).commandLine().getOut()::println);
        Outcome outcome = Outcomes.of(draft, folder, begun(folder));
        if (!outcome.sound()) {
            outcome.lacking().forEach(err::println);
            outcome.faults().stream()
                    .map(fault -> new Problem(
                            name(),
                            fault.row(),
                            (fault.column() + " " + fault.field().words().toLowerCase(Locale.ROOT)).strip(),
                            fault.wrong(),
                            fault.value(),
                            fault.accepted()))
                    .forEach(err::println);
            return refuse(err, "%d faults in %s".formatted(outcome.faults().size(), name()));
        }
        FolderWriter.write(Takings.over(folder, outcome), Objects.requireNonNull(out));
        print(outcome);
        return ExitCodes.DONE;
    }

    private void print(Outcome outcome) {
        PrintWriter print = Objects.requireNonNull(spec).commandLine().getOut();
        print.printf(
                Locale.ROOT,
                "%d new, %d changed, %d same, %d begun and left as they are, %d of the site not in the schedule and kept%n",
                outcome.openings(Kind.NEW).size(),
                outcome.openings(Kind.CHANGED).size(),
                outcome.openings(Kind.SAME).size(),
                outcome.openings(Kind.HELD).size(),
                outcome.missing().size());
        outcome.openings(Kind.HELD)
                .forEach(one -> print.println("left as it is: %s, %s"
                        .formatted(
                                one.id(),
                                one.differences().stream()
                                        .map(d -> "%s %s (schedule: %s)".formatted(d.what(), d.was(), d.said()))
                                        .collect(Collectors.joining(", ")))));
        print.println(Commands.NOT_A_SAFETY_STATEMENT);
    }

    private static Set<OpeningId> begun(JobFolder folder) {
        return folder.openings().stream()
                .filter(opening -> opening.done() > 0 || !opening.finished().isEmpty())
                .map(Opening::id)
                .collect(Collectors.toSet());
    }

    private static int refuse(PrintWriter err, String why) {
        for (String line : List.of(why, "Nothing was written.")) err.println(line);
        return ExitCodes.BAD_INPUT;
    }
}
