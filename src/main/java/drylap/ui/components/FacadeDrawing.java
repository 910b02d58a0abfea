package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.shared.Registration;
import drylap.kernel.OpeningId;
import drylap.ui.drawn.Wall;
import java.util.function.Consumer;

/** A facade with its openings as they stand. */
@Tag("facade-drawing")
@JsModule("./facade-drawing.ts")
public final class FacadeDrawing extends Component {
    public void show(Wall wall) {
        getElement().setPropertyBean("wall", wall);
    }

    /** For a page of several walls that has an {@link OpeningKey} of its own. */
    public void leaveKeyOut() {
        getElement().setProperty("keyless", true);
    }

    public void choose(OpeningId opening) {
        getElement().setProperty("chosen", opening.value());
    }

    public Registration onOpeningChosen(Consumer<OpeningId> listener) {
        return addListener(OpeningChosen.class, event -> listener.accept(event.opening()));
    }
}
