package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.shared.Registration;
import drylap.kernel.OpeningId;
import drylap.ui.drawn.Week;
import java.util.function.Consumer;

/** Crews by days, over the rain and the dark. */
@Tag("week-sheet")
@JsModule("./week-sheet.ts")
public final class WeekSheet extends Component {
    public void show(Week week) {
        getElement().setPropertyBean("week", week);
    }

    public Registration onOpeningChosen(Consumer<OpeningId> listener) {
        return addListener(OpeningChosen.class, event -> listener.accept(event.opening()));
    }

    public Registration onVisitChosen(Consumer<VisitChosen> listener) {
        return addListener(VisitChosen.class, listener::accept);
    }

    public Registration onVisitDropped(Consumer<VisitDropped> listener) {
        return addListener(VisitDropped.class, listener::accept);
    }
}
