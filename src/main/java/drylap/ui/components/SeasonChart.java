package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import drylap.ui.drawn.SeasonOfWall;

/** A facade's hours of use month by month, against the work that is left. */
@Tag("season-chart")
@JsModule("./season-chart.ts")
public final class SeasonChart extends Component {
    public void show(SeasonOfWall.Chart chart) {
        getElement().setPropertyBean("season", chart);
    }
}
