package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.shared.Registration;
import drylap.kernel.OpeningId;
import drylap.ui.drawn.DrawnWeek;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Crews by days, over the rain and the dark. The page is told where to fetch the week, at an address that only its own session may ask: in the
 * page's state, or in a message to it, the JSON of 3,000 openings takes megabytes of the server's memory for each page that is open.
 */
@Tag("week-sheet")
@JsModule("./week-sheet.ts")
public final class WeekSheet extends Component {
    private transient @Nullable DrawnWeek week;

    public void show(DrawnWeek now) {
        if (now.equals(week)) return;
        week = now;
        getElement().setAttribute("src", new WeekAnswer(now));
    }

    /** What is shown. */
    public @Nullable DrawnWeek week() {
        return week;
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
