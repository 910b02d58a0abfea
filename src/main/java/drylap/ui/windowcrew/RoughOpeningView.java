package drylap.ui.windowcrew;

import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.roughopening.RoughResult;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Opening;
import drylap.speech.Part;
import drylap.speech.Speech;
import drylap.ui.drawn.RoughSheet;
import drylap.ui.planner.RoughVerdictPanel;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.util.List;
import java.util.UUID;

/** Where a rough opening is measured, and what its measurements come to. */
@Route("rough-opening")
@Needs(Operation.SEE_OPENINGS)
@CssImport("./window-crew.css")
@CssImport("./rough-opening.css")
class RoughOpeningView extends Div implements BeforeEnterObserver, Spoken {
    private final transient RoughDesk desk;
    private final transient SignedIn signedIn;
    private final transient Speech say;

    RoughOpeningView(RoughDesk desk, SignedIn signedIn) {
        this.desk = desk;
        this.signedIn = signedIn;
        say = new Speech(signedIn.reading());
        addClassNames("crew-screen", "rough-opening");
    }

    @Override
    public String called() {
        return say.it("Rough opening");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        QueryParameters asked = event.getLocation().getQueryParameters();
        String folder = asked.getSingleParameter("folder")
                .filter(one -> one.matches("\\d{1,18}"))
                .orElse("0");
        String opening = asked.getSingleParameter("opening").orElse("");
        var id = new FolderId(Long.parseLong(folder));
        removeAll();
        Person who = signedIn.person();
        if (opening.isBlank()) none();
        else desk.opening(who, id, new OpeningId(opening)).ifPresentOrElse(one -> show(who, id, one), this::none);
    }

    private void none() {
        add(new H1(say.it("No such opening")), new Paragraph(say.it("There is none of this name at your sites.")));
    }

    private void show(Person who, FolderId folder, Opening opening) {
        removeAll();
        var caution = new Paragraph(say.it(RoughSheet.CAUTION));
        caution.addClassName("soft");
        var steps = StopCard.steps(folder, opening.id().value());
        steps.setText(say.it("Steps of {0}", opening.id()));
        steps.addClassName("way-on");
        add(new H1(say.it("Rough opening {0}", opening.id())), caution, steps, designed(opening));
        List<RoughSheet> sheets = desk.sheets(who, folder, opening);
        add(
                sheets.isEmpty()
                        ? new Paragraph(say.it("It was not measured yet."))
                        : new RoughVerdictPanel(say, sheets.getFirst()));
        if (desk.mayMeasure(who, opening)) {
            UUID key = UUID.randomUUID();
            add(
                    new H2(say.it(sheets.isEmpty() ? "Measure it" : "Measure it again")),
                    new RoughForm(say, (sizes, note) -> {
                        RoughResult result = desk.record(who, folder, opening.id(), key, sizes, note);
                        if (result instanceof RoughResult.Recorded) show(who, folder, opening);
                        return result;
                    }));
        }
        earlier(sheets);
    }

    private Paragraph designed(Opening opening) {
        return new Paragraph(say.it(
                "Designed {0}, {1}, level {2}.",
                new Part.Size(opening.widthMm(), opening.heightMm()),
                opening.facade().facade(),
                opening.level()));
    }

    private void earlier(List<RoughSheet> sheets) {
        if (sheets.size() < 2) return;
        add(new H2(say.it("Measured before")));
        sheets.stream()
                .skip(1)
                .map(one -> new Paragraph("%s: %s.".formatted(one.by(), one.title())))
                .forEach(this::add);
    }
}
