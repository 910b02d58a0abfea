package drylap.ui.components;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.internal.JacksonUtils;
import com.vaadin.flow.shared.Registration;
import drylap.kernel.OpeningId;
import drylap.ui.drawn.Week;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Crews by days, over the rain and the dark. The week is handed to the page and not kept as a property: as JSON one of 3,000 openings takes
 * some 20 MB of the server's memory for each page that is open.
 */
@Tag("week-sheet")
@JsModule("./week-sheet.ts")
public final class WeekSheet extends Component {
    private transient @Nullable Week week;
    private boolean onItsWay;

    public void show(Week now) {
        if (now.equals(week)) return;
        week = now;
        if (isAttached()) hand();
    }

    /** What is shown. */
    public @Nullable Week week() {
        return week;
    }

    /** The page has made its element anew. */
    @Override
    protected void onAttach(AttachEvent event) {
        onItsWay = false;
        if (week != null) hand();
    }

    /** Once for each answer, however often it changed until then. */
    private void hand() {
        if (onItsWay) return;
        onItsWay = true;
        getUI().orElseThrow().beforeClientResponse(this, _ -> {
            onItsWay = false;
            Week newest = week;
            if (newest != null) getElement().executeJs("this.week = $0", JacksonUtils.beanToJson(newest));
        });
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
