package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import drylap.ui.drawn.Run;

/** A planning run as it goes. */
@Tag("plan-run")
@JsModule("./plan-run.ts")
public final class PlanMeter extends Component {
    public void show(Run run) {
        getElement().setPropertyBean("run", run);
    }
}
