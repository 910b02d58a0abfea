package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.Run;
import drylap.ui.drawn.StartFacts;
import drylap.ui.drawn.StartSheet;
import drylap.ui.drawn.StartSheet.Line;
import drylap.ui.drawn.StartSheet.Standing;
import drylap.ui.drawn.StartSheet.Step;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Icons;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import org.jspecify.annotations.Nullable;

/** What is there and what is missing next, each line one click from where it is done. */
@Route("start")
@Needs(Operation.SEE_START)
@Menu(title = "Start", order = 70)
@CssImport("./start.css")
class StartView extends Div implements FolderView, BeforeEnterObserver, Spoken {
    /** What was drawn, so that a page that somebody reads is drawn anew only where it changed. */
    private record Drawn(StartSheet sheet, boolean mayPlan, boolean sample, boolean mayLoad) {}

    private final transient StartDesk start;
    private final transient Desk desk;
    private final transient Person who;
    private final transient Speech say;
    private transient @Nullable Drawn drawn;

    StartView(StartDesk start, Desk desk, SignedIn signedIn) {
        this.start = start;
        this.desk = desk;
        who = signedIn.person();
        say = new Speech(who.reading());
        addClassName("start-view");
    }

    @Override
    public String called() {
        return say.it("Start");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        draw();
    }

    @Override
    public void show(FolderShown shown) {
        draw();
    }

    @Override
    public void show(Run run) {
        draw();
    }

    private void draw() {
        StartFacts facts = start.facts(who, desk.own());
        var now = new Drawn(StartSheet.of(facts), facts.mayPlan(), start.sampleIsThere(), start.mayLoadSample());
        if (now.equals(drawn)) return;
        drawn = now;
        removeAll();
        add(steps(now), new SamplePanel(start, who, now.sample(), now.mayLoad(), this::anew));
    }

    /** What the sample brought or took may be all that there was. */
    private void anew() {
        desk.refresh();
        UI.getCurrent().getPage().setLocation("");
    }

    private Section steps(Drawn now) {
        Section panel = Panels.panel(
                "steps", say.it(now.sheet().complete() ? "Everything is there" : "From nothing to a published plan"));
        var list = new OrderedList();
        list.addClassName("start-steps");
        now.sheet().lines().forEach(line -> list.add(item(line, now.mayPlan())));
        panel.add(new Paragraph(say.it("In the order of work. Nothing is lost if you stop and come back.")), list);
        return panel;
    }

    private ListItem item(Line line, boolean mayPlan) {
        var standing = Panels.text(say.it(line.standing().words()), "standing");
        var sign = new Div();
        sign.addClassName("sign");
        if (line.standing() == Standing.DONE) sign.add(Icons.DONE.svg());
        if (line.standing() == Standing.NEXT) sign.add(Icons.NEXT.svg());
        var said = new Div(way(line, mayPlan), Panels.text(say.it(line.said()), "source"));
        said.addClassName("said");
        var item = new ListItem(sign, said, standing);
        item.addClassName(line.standing().name().toLowerCase(java.util.Locale.ROOT));
        return item;
    }

    private Component way(Line line, boolean mayPlan) {
        if (line.step() == Step.PLAN && line.standing() != Standing.DONE) return plan(line, mayPlan);
        return StartWays.of(say, line.step());
    }

    private Component plan(Line line, boolean mayPlan) {
        var plan = new Button(say.it("Plan now"), _ -> plan());
        if (line.standing() == Standing.NEXT) plan.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        plan.setEnabled(mayPlan);
        plan.setDisableOnClick(true);
        return new Div(Panels.text(say.it(line.step().words()) + " ", "strong"), plan);
    }

    private void plan() {
        desk.own().ifPresent(own -> desk.open(own.stored().id()));
        desk.plan(Desk.FIRST_PLAN_SECONDS);
        UI.getCurrent().navigate(WeekSheetView.class);
    }
}
