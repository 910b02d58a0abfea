package drylap.intake;

import drylap.intake.csv.Lines;
import drylap.planning.CoverNow;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.OpenWindow;
import drylap.planning.Plan;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import drylap.sites.Opening;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Writes a plan folder: the same plan gives the same bytes, times in the offset of their site. */
public final class PlanWriter {
    private static final Comparator<Visit> BY_CREW_AND_START =
            Comparator.comparing(Visit::crew).thenComparing(Visit::start).thenComparing(Visit::sequence);
    private static final Comparator<OpenWindow> BY_FACADE_AND_TASK = Comparator.comparing(OpenWindow::facade)
            .thenComparing(OpenWindow::task)
            .thenComparing(window -> window.when().from());

    private PlanWriter() {}

    /** @throws IOException where the target cannot be written */
    public static void write(Plan plan, JobFolder folder, Path target) throws IOException {
        FolderWriter.write(lines(plan, folder), target);
    }

    /** The five files of the plan by name, as bytes. */
    public static Map<String, byte[]> files(Plan plan, JobFolder folder) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (Lines lines : lines(plan, folder))
            files.put(lines.file(), lines.text().getBytes(StandardCharsets.UTF_8));
        return files;
    }

    private static List<Lines> lines(Plan plan, JobFolder folder) {
        Zones zones = Zones.of(folder.sites());
        return List.of(
                visits(plan.visits(), zones),
                unplanned(plan.unplanned()),
                coverNow(plan.coverNow(), folder, zones),
                openHours(plan.openHours(), zones),
                ledger(plan.ledger()));
    }

    private static Lines visits(List<Visit> visits, Zones zones) {
        Lines lines = new Lines(ContractFiles.VISITS);
        for (Visit visit : visits.stream().sorted(BY_CREW_AND_START).toList())
            lines.add(
                    visit.crew(),
                    visit.date(),
                    visit.sequence(),
                    visit.facade().site(),
                    visit.facade().facade(),
                    visit.level(),
                    visit.opening(),
                    visit.task().code(),
                    Lines.time(visit.start(), zones.of(visit.facade().site())),
                    Lines.time(visit.end(), zones.of(visit.facade().site())));
        return lines;
    }

    private static Lines unplanned(List<UnplannedTask> tasks) {
        Lines lines = new Lines(ContractFiles.UNPLANNED);
        for (UnplannedTask task : tasks)
            lines.add(task.opening(), task.task().code(), task.reason().code(), task.detail());
        return lines;
    }

    /** In the plan's order, which is the order in which to go. */
    private static Lines coverNow(List<CoverNow> openings, JobFolder folder, Zones zones) {
        Map<Object, Opening> byId = new HashMap<>();
        folder.openings().forEach(opening -> byId.put(opening.id(), opening));
        Lines lines = new Lines(ContractFiles.COVER_NOW);
        for (CoverNow cover : openings) {
            Opening opening = Objects.requireNonNull(byId.get(cover.opening()), () -> "no opening " + cover.opening());
            var zone = zones.of(opening.facade().site());
            lines.add(
                    cover.opening(),
                    Lines.time(cover.openSince(), zone),
                    Lines.time(cover.nextRain(), zone),
                    cover.minutesToClose());
        }
        return lines;
    }

    private static Lines openHours(List<OpenWindow> windows, Zones zones) {
        Lines lines = new Lines(ContractFiles.OPEN_HOURS);
        for (OpenWindow window : windows.stream().sorted(BY_FACADE_AND_TASK).toList())
            lines.add(
                    window.facade().site(),
                    window.facade().facade(),
                    window.task().code(),
                    Lines.time(window.when().from(), zones.of(window.facade().site())),
                    Lines.time(window.when().until(), zones.of(window.facade().site())));
        return lines;
    }

    private static Lines ledger(Ledger ledger) {
        Lines lines = new Lines(ContractFiles.LEDGER);
        for (Ledger.Line line : ledger.lines())
            lines.add(line.term().code(), line.amount(), line.weight(), line.cost());
        return lines.add("hard", null, null, ledger.hard())
                .add("medium", null, null, ledger.medium())
                .add("soft", null, null, ledger.soft());
    }
}
