package drylap.ui.windowcrew;

import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.roughopening.RoughResult;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.sites.Opening;
import drylap.ui.drawn.RoughSheet;
import drylap.ui.planner.RoughVerdictPanel;
import drylap.ui.shell.Needs;
import java.util.List;
import java.util.UUID;

/** Where a rough opening is measured, and what its measurements come to. */
@Route("rough-opening")
@Needs(Operation.SEE_OPENINGS)
@PageTitle("Rough opening · Drylap")
@CssImport("./window-crew.css")
@CssImport("./rough-opening.css")
class RoughOpeningView extends Div implements BeforeEnterObserver {
    private final transient RoughDesk desk;
    private final transient SignedIn signedIn;

    RoughOpeningView(RoughDesk desk, SignedIn signedIn) {
        this.desk = desk;
        this.signedIn = signedIn;
        addClassNames("crew-screen", "rough-opening");
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
        add(new H1("No such opening"), new Paragraph("There is none of this name at your sites."));
    }

    private void show(Person who, FolderId folder, Opening opening) {
        removeAll();
        var caution = new Paragraph(RoughSheet.CAUTION);
        caution.addClassName("soft");
        var steps = StopCard.steps(folder, opening.id().value());
        steps.setText("Steps of " + opening.id());
        steps.addClassName("way-on");
        add(new H1("Rough opening " + opening.id()), caution, steps, designed(opening));
        List<RoughSheet> sheets = desk.sheets(who, folder, opening);
        add(sheets.isEmpty() ? new Paragraph("It was not measured yet.") : new RoughVerdictPanel(sheets.getFirst()));
        if (desk.mayMeasure(who, opening)) {
            UUID key = UUID.randomUUID();
            add(new H2(sheets.isEmpty() ? "Measure it" : "Measure it again"), new RoughForm((sizes, note) -> {
                RoughResult result = desk.record(who, folder, opening.id(), key, sizes, note);
                if (result instanceof RoughResult.Recorded) show(who, folder, opening);
                return result;
            }));
        }
        earlier(sheets);
    }

    private static Paragraph designed(Opening opening) {
        return new Paragraph("Designed %d × %d mm, %s, level %d."
                .formatted(
                        opening.widthMm(), opening.heightMm(), opening.facade().facade(), opening.level()));
    }

    private void earlier(List<RoughSheet> sheets) {
        if (sheets.size() < 2) return;
        add(new H2("Measured before"));
        sheets.stream()
                .skip(1)
                .map(one -> new Paragraph("%s: %s.".formatted(one.by(), one.title())))
                .forEach(this::add);
    }
}
