package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;

/** How to read the openings of the walls beside it, hands included. */
@Tag("opening-key")
@JsModule("./opening-key.ts")
public final class OpeningKey extends Component {
    public OpeningKey() {
        getElement().setProperty("handed", true);
    }
}
