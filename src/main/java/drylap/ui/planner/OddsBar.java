package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.dom.Element;
import drylap.risk.OddsState;
import drylap.speech.Speech;
import drylap.ui.drawn.Words;
import org.jspecify.annotations.Nullable;

/** Begins and ends a reckoning, and shows how far it has come. */
final class OddsBar extends Div {
    private final transient Speech say;
    private final Button reckon = new Button();
    private final Button stop = new Button();
    private final Paragraph standing = new Paragraph();
    private final Element progress = new Element("progress");

    OddsBar(Speech say, Runnable begin, Runnable end) {
        this.say = say;
        reckon.setText(say.it("Reckon the odds"));
        stop.setText(say.it("Stop"));
        addClassName("odds-bar");
        reckon.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        reckon.addClickListener(_ -> begin.run());
        stop.addClickListener(_ -> {
            stop.setEnabled(false);
            end.run();
        });
        standing.getElement().setAttribute("role", "status");
        progress.setAttribute("aria-label", say.it("Trials done"));
        add(standing);
        getElement().appendChild(progress);
        add(reckon, stop);
    }

    /** @param state none where the plan was never reckoned */
    void show(@Nullable OddsState state, boolean may) {
        boolean underWay = state != null && !state.status().ended();
        reckon.setVisible(may && !underWay);
        reckon.setText(say.it(state == null || state.odds() == null ? "Reckon the odds" : "Reckon anew"));
        if (!underWay) stop.setEnabled(true);
        stop.setVisible(may && underWay);
        standing.setText(words(state, may));
        progress.setVisible(underWay);
        if (state != null && underWay) done(state.done(), state.trials());
    }

    void done(int done, int trials) {
        progress.setAttribute("max", Integer.toString(trials));
        progress.setAttribute("value", Integer.toString(done));
        progress.setText(say.it("{0} of {1} trials", Words.number(done), Words.number(trials)));
    }

    private String words(@Nullable OddsState state, boolean may) {
        if (state == null)
            return say.it(
                    may
                            ? "The odds of this plan were not reckoned yet."
                            : "The odds of this plan were not reckoned yet. Someone who plans every site of the job folder can have it done.");
        return switch (state.status()) {
            case QUEUED -> say.it("Waits for its turn.");
            case RUNNING ->
                say.it(
                        "The plan is replayed under drawn weather, work and deliveries. The page stays yours meanwhile.");
            case DONE -> "";
            case STOPPED ->
                say.it(
                        state.odds() == null
                                ? "Stopped before its end."
                                : "Stopped before its end; those from before are below.");
            case FAILED ->
                say.it(
                        state.odds() == null
                                ? "It could not be reckoned: {0}."
                                : "It could not be reckoned: {0}; those from before are below.",
                        state.failure() == null ? say.it("no reason was given") : state.failure());
        };
    }
}
