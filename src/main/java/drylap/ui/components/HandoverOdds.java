package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import drylap.ui.drawn.HandoverChart;

/** The chance by day that a facade is handed over. */
@Tag("handover-odds")
@JsModule("./handover-odds.ts")
public final class HandoverOdds extends Component {
    public void show(HandoverChart odds) {
        getElement().setPropertyBean("odds", odds);
    }
}
