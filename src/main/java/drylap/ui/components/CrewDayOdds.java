package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import drylap.ui.drawn.OddsCharts;

/** How likely crew-days are not got through. */
@Tag("crew-day-odds")
@JsModule("./crew-day-odds.ts")
public final class CrewDayOdds extends Component {
    public void show(OddsCharts.CrewDays odds) {
        getElement().setPropertyBean("odds", odds);
    }
}
