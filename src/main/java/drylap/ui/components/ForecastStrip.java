package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import drylap.speech.Speech;
import drylap.ui.drawn.Strip;
import java.util.List;

/** A facade's rain, dark and open hours. */
@Tag("forecast-strip")
@JsModule("./forecast-strip.ts")
public final class ForecastStrip extends Component {
    public static final String HINT = "Point at an hour, or move along a strip with the arrow keys, to read it.";

    /** What the rows and their shades mean. */
    public static List<String> key(Speech say) {
        return List.of(
                say.it("Rain: full bars count as rain; pale bars are too little or too unlikely."),
                say.it("Chance of rain: full bars reach the dashed line, from which an hour counts."),
                say.it("On the wall: rain that the wind drives on this wall, as on an open airfield; full bars wet it, "
                        + "so that it must dry. It ranks hours and walls and promises no litres."),
                say.it("Gust and temperature: beyond the dashed line, where full bars stand, the install stops."),
                say.it("Framed bars: the wall is open for that task. Grey ground: dark. Dotted ground: beyond the "
                        + "forecast: climate only, hours are counted as open."));
    }

    /** What stands below the strip while no hour is read. */
    public void hint(String hint) {
        getElement().setProperty("hint", hint);
    }

    public void show(Strip strip) {
        getElement().setPropertyBean("strip", strip);
    }
}
