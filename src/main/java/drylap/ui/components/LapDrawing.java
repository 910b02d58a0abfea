package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;

/** The section through an opening's laps, with the way of the water. */
@Tag("lap-section")
@JsModule("./lap-section.ts")
public final class LapDrawing extends Component {
    /** Both as {@code drylap.assembly} draws them; the browser takes the one that its width can show. */
    public void show(String wide, String tall, String caption) {
        getElement().setProperty("wide", wide);
        getElement().setProperty("tall", tall);
        getElement().setProperty("caption", caption);
    }
}
