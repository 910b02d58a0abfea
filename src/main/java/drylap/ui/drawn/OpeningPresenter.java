package drylap.ui.drawn;

import drylap.assembly.Advice;
import drylap.assembly.AsBuilt;
import drylap.assembly.LapSection;
import drylap.assembly.RainCheck;
import drylap.assembly.SecondLayer;
import drylap.assembly.StepList.ListedStep;
import drylap.assembly.WaterPath;
import drylap.assembly.WaterTrace;
import drylap.assembly.Weakness;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.Plan;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.ui.drawn.OpeningSheet.Fact;
import drylap.ui.drawn.OpeningSheet.Line;
import drylap.ui.drawn.OpeningSheet.Planned;
import drylap.ui.drawn.OpeningSheet.Standing;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Fills the sheet of one opening. */
public final class OpeningPresenter {
    private final FolderShown shown;
    private final Opening opening;
    private final AsBuilt built;

    private OpeningPresenter(FolderShown shown, OpeningId id) {
        this.shown = shown;
        opening = shown.opening(id);
        built = WallPresenter.built(opening);
    }

    public static OpeningSheet sheet(FolderShown shown, OpeningId id) {
        return new OpeningPresenter(shown, id).sheet();
    }

    private OpeningSheet sheet() {
        RainCheck check = RainCheck.of(built);
        List<WaterPath> paths = WaterTrace.of(built);
        return new OpeningSheet(
                opening.id().value(),
                "%s, level %d".formatted(shown.title(opening.facade()), opening.level()),
                WallPresenter.glyph(opening),
                facts(),
                opening.stepList().steps().stream().map(this::line).toList(),
                check.rating().code(),
                check.rating().words(),
                check.rating().mayBeLeft(),
                check.weaknesses().stream().map(Weakness::words).distinct().toList(),
                built.apron().words(),
                paths.stream().map(WaterPath::words).distinct().toList(),
                LapSection.svg(built, LapSection.Layout.WIDE),
                LapSection.svg(built, LapSection.Layout.STACKED),
                caption(paths),
                Advice.of(opening.frame(), opening.approach()),
                opening.tasks().stream().map(this::planned).toList());
    }

    private List<Fact> facts() {
        return List.of(
                new Fact("Size", "%d × %d mm".formatted(opening.widthMm(), opening.heightMm())),
                new Fact("Frame", opening.frame().code()),
                new Fact("Method", Words.method(opening.method()).words()),
                new Fact("Sill", Words.approach(opening.approach())),
                new Fact("Below the sill", second(opening.secondLayer())),
                new Fact(
                        "Window on site",
                        Words.weekday(opening.deliveredOn()) + " " + Words.date(opening.deliveredOn())));
    }

    private static String second(SecondLayer layer) {
        return switch (layer) {
            case NONE -> "one barrier layer";
            case TUCK -> "a second barrier tucked under the apron";
            case DRAIN_BETWEEN -> "a second barrier, drained between the layers";
        };
    }

    private Line line(ListedStep step) {
        Standing standing = step.number() <= opening.done()
                ? Standing.DONE
                : step.number() == next() ? Standing.NEXT : Standing.LATER;
        return new Line(step.number(), step.text(), standing, step.install());
    }

    private int next() {
        return opening.stepList().steps().stream()
                .mapToInt(ListedStep::number)
                .filter(number -> number > opening.done())
                .min()
                .orElse(0);
    }

    private static String caption(List<WaterPath> paths) {
        return paths.stream()
                .filter(path -> path.end().inside())
                .findFirst()
                .map(path ->
                        "Water put on %s %s.".formatted(start(path), path.end().words()))
                .orElse("Water put on anywhere ends outside.");
    }

    private static String start(WaterPath path) {
        return path.start().words().replaceFirst("^at ", "");
    }

    private Planned planned(Task task) {
        Optional<Visit> visit = shown.plan().map(Plan::visits).orElse(List.of()).stream()
                .filter(v -> v.opening().equals(opening.id()) && v.task() == task)
                .findFirst();
        return new Planned(
                Words.task(task), task.code(), visit.map(this::when).orElseGet(() -> whyNot(task)), visit.isPresent());
    }

    private String when(Visit visit) {
        ZoneId zone = shown.site(opening.facade().site()).zone();
        boolean beyond =
                visit.end().isAfter(shown.weather(opening.facade().site()).forecastEnd());
        return "%s to %s, crew %s%s"
                .formatted(
                        Words.moment(visit.start(), zone),
                        Words.clock(visit.end(), zone),
                        visit.crew(),
                        beyond ? ", beyond the forecast" : "");
    }

    private String whyNot(Task task) {
        return shown.plan().map(Plan::unplanned).orElse(List.of()).stream()
                .filter(unplanned -> unplanned.opening().equals(opening.id()) && unplanned.task() == task)
                .findFirst()
                .map(OpeningPresenter::reason)
                .orElse("no plan yet");
    }

    private static String reason(UnplannedTask unplanned) {
        return "not planned: %s (%s)"
                .formatted(NotPlanned.reason(unplanned.reason()).toLowerCase(Locale.ROOT), unplanned.detail());
    }
}
