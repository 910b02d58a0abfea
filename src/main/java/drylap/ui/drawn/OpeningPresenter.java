package drylap.ui.drawn;

import drylap.assembly.Advice;
import drylap.assembly.AsBuilt;
import drylap.assembly.Frame;
import drylap.assembly.LapSection;
import drylap.assembly.RainCheck;
import drylap.assembly.SecondLayer;
import drylap.assembly.StepList.ListedStep;
import drylap.assembly.WaterPath;
import drylap.assembly.WaterTrace;
import drylap.assembly.Weakness;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.LeftOut;
import drylap.planning.Plan;
import drylap.planning.UnplannedTask;
import drylap.planning.Visit;
import drylap.sites.Opening;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.OpeningSheet.Fact;
import drylap.ui.drawn.OpeningSheet.Line;
import drylap.ui.drawn.OpeningSheet.Planned;
import drylap.ui.drawn.OpeningSheet.Standing;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Fills the sheet of one opening. */
public final class OpeningPresenter {
    private final Speech say;
    private final FolderShown shown;
    private final Opening opening;
    private final AsBuilt built;

    private OpeningPresenter(Speech say, FolderShown shown, OpeningId id) {
        this.say = say;
        this.shown = shown;
        opening = shown.opening(id);
        built = WallPresenter.built(opening);
    }

    public static OpeningSheet sheet(Speech say, FolderShown shown, OpeningId id) {
        return new OpeningPresenter(say, shown, id).sheet();
    }

    private OpeningSheet sheet() {
        RainCheck check = RainCheck.of(built);
        List<WaterPath> paths = WaterTrace.of(built);
        return new OpeningSheet(
                opening.id().value(),
                say.it("{0}, level {1}", shown.title(opening.facade()), opening.level()),
                WallPresenter.glyph(say, opening),
                facts(),
                opening.stepList().steps().stream().map(this::line).toList(),
                check.rating().code(),
                say.it(check.rating().words()),
                check.rating().mayBeLeft(),
                said(check.weaknesses().stream().map(Weakness::saying)),
                say.it(built.apron().saying()),
                said(paths.stream().map(WaterPath::saying)),
                LapSection.svg(built, LapSection.Layout.WIDE, say),
                LapSection.svg(built, LapSection.Layout.STACKED, say),
                caption(paths),
                said(Advice.of(opening.frame(), opening.approach()).stream()),
                opening.tasks().stream().map(this::planned).toList());
    }

    private List<String> said(Stream<Saying> sayings) {
        return sayings.map(say::it).distinct().toList();
    }

    private List<Fact> facts() {
        return List.of(
                new Fact(say.it("Size"), say.size(opening.widthMm(), opening.heightMm())),
                new Fact(say.it("Frame"), frame(opening.frame())),
                new Fact(say.it("Method"), say.it(Words.method(opening.method()))),
                new Fact(say.it("Sill"), say.it(Words.approach(opening.approach()))),
                new Fact(say.it("Below the sill"), second(opening.secondLayer())),
                new Fact(say.it("Window on site"), say.day(opening.deliveredOn())));
    }

    private String frame(Frame frame) {
        return say.it(
                switch (frame) {
                    case WOOD -> "wood";
                    case ALUMINUM -> "aluminum";
                    case VINYL -> "vinyl";
                    case FIBERGLASS -> "fiberglass";
                });
    }

    private String second(SecondLayer layer) {
        return say.it(
                switch (layer) {
                    case NONE -> "one barrier layer";
                    case TUCK -> "a second barrier tucked under the apron";
                    case DRAIN_BETWEEN -> "a second barrier, drained between the layers";
                });
    }

    private Line line(ListedStep step) {
        Standing standing = step.number() <= opening.done()
                ? Standing.DONE
                : step.number() == next() ? Standing.NEXT : Standing.LATER;
        return new Line(step.number(), say.it(step.text()), standing, step.install());
    }

    private int next() {
        return opening.stepList().steps().stream()
                .mapToInt(ListedStep::number)
                .filter(number -> number > opening.done())
                .min()
                .orElse(0);
    }

    private String caption(List<WaterPath> paths) {
        return paths.stream()
                .filter(path -> path.end().inside())
                .findFirst()
                .map(path -> say.it(start(path), Saying.of(path.end().words())))
                .orElseGet(() -> say.it("Water put on anywhere ends outside."));
    }

    private static String start(WaterPath path) {
        return switch (path.start()) {
            case HEAD -> "Water put on the head {0}.";
            case JAMB -> "Water put on a jamb {0}.";
            case SILL -> "Water put on the sill {0}.";
        };
    }

    private Planned planned(Task task) {
        Optional<Visit> visit = shown.plan().map(Plan::visits).orElse(List.of()).stream()
                .filter(v -> v.opening().equals(opening.id()) && v.task() == task)
                .findFirst();
        return new Planned(
                say.it(Words.task(task)),
                task.code(),
                visit.map(this::when).orElseGet(() -> whyNot(task)),
                visit.isPresent());
    }

    private String when(Visit visit) {
        ZoneId zone = shown.site(opening.facade().site()).zone();
        boolean beyond =
                visit.end().isAfter(shown.weather(opening.facade().site()).forecastEnd());
        return say.it(
                beyond ? "{0} to {1}, crew {2}, beyond the forecast" : "{0} to {1}, crew {2}",
                say.moment(visit.start(), zone),
                say.clock(visit.end(), zone),
                visit.crew());
    }

    private String whyNot(Task task) {
        return shown.plan().map(Plan::unplanned).orElse(List.of()).stream()
                .filter(unplanned -> unplanned.opening().equals(opening.id()) && unplanned.task() == task)
                .findFirst()
                .map(this::reason)
                .orElseGet(() -> say.it("no plan yet"));
    }

    private String reason(UnplannedTask unplanned) {
        return say.it(
                "not planned: {0} ({1})",
                say.it(NotPlanned.reason(unplanned.reason())).toLowerCase(Locale.ROOT),
                LeftOut.read(unplanned.detail()));
    }
}
