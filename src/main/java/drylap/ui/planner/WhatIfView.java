package drylap.ui.planner;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.UIDetachedException;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.security.Operation;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.WhatIfSheet;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import drylap.ui.shell.TroubleLine;
import drylap.whatif.WhatIfAnswer;
import drylap.whatif.WhatIfState;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** What would become of the job if something were otherwise. Nothing that is published or proposed changes by it. */
@Route("what-if")
@Needs(Operation.PROPOSE_PLAN)
@Menu(title = "What if", order = 3.5)
@CssImport("./what-if.css")
class WhatIfView extends Div implements FolderView, Spoken {
    private static final Duration LOOK_EVERY = Duration.ofMillis(500);

    private final transient WhatIfDesk desk;
    private final transient Speech say;
    private final ScenariosPanel scenarios;
    private final ChangeForm form;
    private final ScenarioFile file;
    private final WhatIfBar bar;
    private final TroubleLine trouble = new TroubleLine();
    private final Div outcomes = new Div();
    private transient @Nullable FolderShown shown;
    private transient @Nullable Thread looking;
    private transient @Nullable WhatIfState drawn;

    WhatIfView(WhatIfDesk desk, SignedIn signedIn) {
        this.desk = desk;
        say = new Speech(signedIn.reading());
        addClassName("what-if-view");
        scenarios = new ScenariosPanel(say, desk, this::drawScenarios);
        form = new ChangeForm(say, desk, this::drawScenarios);
        file = new ScenarioFile(say, desk, this::drawScenarios);
        bar = new WhatIfBar(say, this::begin, this::end);
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("What if");
    }

    @Override
    public void show(FolderShown now) {
        boolean first = shown == null || !shown.stored().equals(now.stored());
        shown = now;
        if (!desk.mayCompare(now)) {
            removeAll();
            add(new Paragraph(
                    say.it("Scenarios are planned over every site of a job folder; not all of this one are yours.")));
            return;
        }
        form.show(now);
        file.show(now);
        if (first) lay();
        drawScenarios();
        look();
    }

    private void lay() {
        removeAll();
        drawn = null;
        outcomes.removeAll();
        var hint = new Paragraph(say.it("The job as it stands is planned beside each scenario, all with the same time. "
                + "It is thinking aloud: no plan, proposed or published, changes by it."));
        hint.addClassName("hint");
        Section change = Panels.panel("what-if-change", say.it("A change"));
        change.add(form, file);
        Section own = Panels.panel("what-if-scenarios", say.it("Scenarios"));
        own.add(scenarios, bar, trouble);
        add(hint, change, own, outcomes);
    }

    private void drawScenarios() {
        if (shown == null) return;
        scenarios.show(shown);
        trouble.clear();
    }

    private void begin(long seconds) {
        FolderShown now = shown;
        if (now == null) return;
        switch (desk.begin(now, seconds)) {
            case WhatIfAnswer.Refused(var why) -> {
                trouble.say(say.it(why));
            }
            case WhatIfAnswer.Begun _ -> {
                trouble.clear();
                look();
            }
        }
    }

    private void end() {
        if (shown != null) desk.stop(shown);
    }

    /** Draws how the comparison stands; as long as it goes on, again soon. */
    private void look() {
        FolderShown now = shown;
        if (now == null || !desk.mayCompare(now)) return;
        desk.state(now).ifPresent(state -> {
            if (!state.equals(drawn)) draw(now, state);
            drawn = state;
            if (!state.status().ended()) lookSoon();
        });
    }

    private void draw(FolderShown now, WhatIfState state) {
        bar.show(state);
        outcomes.removeAll();
        if (state.outcomes().isEmpty()) return;
        var zone = now.folder().sites().getFirst().zone();
        Section panel = Panels.panel("what-if-outcomes", say.it("Compared"));
        panel.add(
                new Paragraph(say.it(
                        "Asked {0}, each planned for up to {1}. Differences are against the job as it is.",
                        say.moment(state.asked(), zone),
                        PlanBar.time(state.limit().toSeconds()))),
                new OutcomesPanel(say, now.name(), WhatIfSheet.of(say, now, state.outcomes())));
        outcomes.add(panel);
    }

    private void lookSoon() {
        UI ui = UI.getCurrent();
        if (looking != null && looking.isAlive()) looking.interrupt();
        looking = Thread.startVirtualThread(() -> {
            try {
                Thread.sleep(LOOK_EVERY);
                ui.access(this::look);
            } catch (InterruptedException | UIDetachedException gone) {
                // whoever left does not need it any more
            }
        });
    }

    @Override
    protected void onAttach(AttachEvent event) {
        look();
    }

    @Override
    protected void onDetach(DetachEvent event) {
        if (looking != null) looking.interrupt();
        looking = null;
    }
}
