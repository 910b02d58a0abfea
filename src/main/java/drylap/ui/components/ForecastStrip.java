package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import drylap.ui.drawn.Strip;

/** A facade's rain, dark and open hours. */
@Tag("forecast-strip")
@JsModule("./forecast-strip.ts")
public final class ForecastStrip extends Component {
    public static final String HINT = "Point at an hour, or move along a strip with the arrow keys, to read it. "
            + "Full bars count as rain; pale bars are too little or too unlikely.";

    /** What stands below the strip while no hour is read. */
    public void hint(String hint) {
        getElement().setProperty("hint", hint);
    }

    public void show(Strip strip) {
        getElement().setPropertyBean("strip", strip);
    }
}
