package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.shared.Registration;
import drylap.kernel.OpeningId;
import drylap.ui.drawn.OddsCharts;
import java.util.function.Consumer;

/** Openings by their chance to get wet. */
@Tag("wet-odds")
@JsModule("./wet-odds.ts")
public final class WetOdds extends Component {
    public void show(OddsCharts.Wet odds) {
        getElement().setPropertyBean("odds", odds);
    }

    public Registration onOpeningChosen(Consumer<OpeningId> listener) {
        return addListener(OpeningChosen.class, event -> listener.accept(event.opening()));
    }
}
