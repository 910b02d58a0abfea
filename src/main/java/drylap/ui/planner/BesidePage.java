package drylap.ui.planner;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.UIDetachedException;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import drylap.speech.Speech;
import java.util.function.Supplier;
import org.slf4j.LoggerFactory;

/** A button whose answer takes seconds: it is worked out beside the page, and drawn in the button's place. */
final class BesidePage extends Div {
    private final transient Speech say;
    private final transient Supplier<Component> work;

    /** @param work called on a thread of its own; what it answers is not attached yet */
    BesidePage(Speech say, String words, Supplier<Component> work) {
        this(say, words, words, work);
    }

    /** @param label says what the words, short as they are, only say beside others */
    BesidePage(Speech say, String words, String label, Supplier<Component> work) {
        this.say = say;
        this.work = work;
        var ask = new Button(words, _ -> begin());
        ask.setAriaLabel(label);
        getElement().setAttribute("role", "status");
        add(ask);
    }

    private void begin() {
        UI ui = UI.getCurrent();
        removeAll();
        add(new Paragraph(say.it("Planning again to find out. The page stays yours meanwhile.")));
        Thread.startVirtualThread(() -> work(ui));
    }

    private void work(UI ui) {
        Component found = found();
        try {
            ui.access(() -> {
                removeAll();
                add(found);
            });
        } catch (UIDetachedException gone) {
            // whoever left does not need it any more
        }
    }

    private Component found() {
        try {
            return work.get();
        } catch (RuntimeException e) {
            LoggerFactory.getLogger(BesidePage.class).error("an explanation failed", e);
            return new Paragraph(say.it("It could not be found out. Nothing was changed; the server's log says why."));
        }
    }
}
