package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;
import drylap.kernel.OpeningId;

/** A person pointed at an opening. */
@DomEvent("opening-chosen")
public final class OpeningChosen extends ComponentEvent<Component> {
    private final OpeningId opening;

    public OpeningChosen(Component source, boolean fromClient, @EventData("event.detail.opening") String opening) {
        super(source, fromClient);
        this.opening = new OpeningId(opening);
    }

    public OpeningId opening() {
        return opening;
    }
}
