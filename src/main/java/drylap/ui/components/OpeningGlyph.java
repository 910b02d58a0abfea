package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import drylap.ui.drawn.Wall;

/** One opening from the front, as it stands. */
@Tag("opening-glyph")
@JsModule("./opening-glyph.ts")
public final class OpeningGlyph extends Component {
    public OpeningGlyph(Wall.Glyph glyph) {
        getElement().setPropertyBean("glyph", glyph);
    }
}
