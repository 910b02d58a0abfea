package drylap.cli;

import drylap.audit.Audit;
import drylap.audit.AuditReport;
import drylap.audit.ClaimedPlan;
import drylap.intake.FolderSource;
import drylap.intake.PlanFolder;
import drylap.intake.PlanReader;
import drylap.intake.PlanReading;
import drylap.planning.JobFolder;
import drylap.planning.PublishedVisit;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "check",
        description = {
            "Judges any plan against the rules of planning, with reckoning of its own, and names each breach.",
            "It judges the plan; it never says that work at height is safe."
        },
        exitCodeListHeading = "%nThe command ends with:%n",
        exitCodeList = {
            "0:the plan keeps every rule",
            "1:the plan breaks a rule",
            "2:bad input: the message says where, what, and what is accepted"
        })
final class CheckCommand implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Option(names = "--in", required = true, paramLabel = "FOLDER", description = "The job folder, or a zip of it.")
    @Nullable
    Path in;

    @Option(
            names = "--plan",
            required = true,
            paramLabel = "FOLDER",
            description = "The plan folder. Of its files only visits.csv must be there; what is absent is not judged.")
    @Nullable
    Path plan;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            description = "The moment from which the plan was made, such as 2026-04-13T07:00-07:00 "
                    + "(default: the first shift's start).")
    @Nullable
    OffsetDateTime now;

    @Option(
            names = "--from",
            paramLabel = "PLAN",
            description = "The plan that people had when this one was made, as it was given to the plan command.")
    @Nullable
    Path from;

    @Override
    public Integer call() {
        Folders folders = new Folders(command().commandLine().getErr());
        Optional<JobFolder> folder = folders.job(Objects.requireNonNull(in));
        if (from != null)
            folder = folder.flatMap(
                    job -> folders.published(Objects.requireNonNull(from), job).map(job::withPublished));
        return folder.map(this::against).orElse(ExitCodes.BAD_INPUT);
    }

    private int against(JobFolder folder) {
        FolderSource source = FolderSource.of(Objects.requireNonNull(plan));
        return switch (PlanReader.read(source, folder)) {
            case PlanReading.Refused<PlanFolder> refused -> refuse(refused.text());
            case PlanReading.Read<PlanFolder> read -> judge(folder, read.plan());
        };
    }

    private int judge(JobFolder folder, PlanFolder claimed) {
        AuditReport report = Audit.of(folder, claim(claimed), now == null ? null : now.toInstant());
        PrintWriter out = command().commandLine().getOut();
        report.breaches().forEach(out::println);
        absent(claimed).forEach(file -> out.println("Not judged, because it is absent: " + file));
        out.println(verdict(report, claimed.visits().size()));
        out.println(Commands.NOT_A_SAFETY_STATEMENT);
        return report.clean() ? ExitCodes.DONE : ExitCodes.BREACHES;
    }

    private static ClaimedPlan claim(PlanFolder plan) {
        return new ClaimedPlan(
                plan.visits().stream().map(PublishedVisit::visit).toList(),
                plan.unplanned() == null ? null : ClaimedPlan.unplanned(plan.unplanned()),
                plan.coverNow(),
                plan.openHours(),
                plan.ledger());
    }

    private static List<String> absent(PlanFolder plan) {
        List<String> files = new ArrayList<>();
        if (plan.unplanned() == null) files.add("unplanned.csv");
        if (plan.coverNow() == null) files.add("cover_now.csv");
        if (plan.openHours() == null) files.add("open_hours.csv");
        if (plan.ledger() == null) files.add("ledger.csv");
        return files;
    }

    private static String verdict(AuditReport report, int visits) {
        String costs = "medium %d, soft %d"
                .formatted(report.ledger().medium(), report.ledger().soft());
        int breaches = report.breaches().size();
        if (breaches == 0)
            return "The plan of %d visits keeps every rule (%s as counted here).".formatted(visits, costs);
        return "The plan of %d visits departs from the rules in %d %s, %d of them hard (%s as counted here)."
                .formatted(
                        visits,
                        breaches,
                        breaches == 1 ? "place" : "places",
                        report.ledger().hard(),
                        costs);
    }

    private int refuse(String problems) {
        command().commandLine().getErr().println(problems);
        return ExitCodes.BAD_INPUT;
    }

    private CommandSpec command() {
        return Objects.requireNonNull(spec);
    }
}
