package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;
import drylap.kernel.Coded;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;

/** A person wants to move or to pin a visit. */
@DomEvent("visit-chosen")
public final class VisitChosen extends ComponentEvent<Component> {
    private final OpeningId opening;
    private final Task task;

    public VisitChosen(
            Component source,
            boolean fromClient,
            @EventData("event.detail.opening") String opening,
            @EventData("event.detail.task") String task) {
        super(source, fromClient);
        this.opening = new OpeningId(opening);
        this.task = Coded.of(Task.class, task);
    }

    public OpeningId opening() {
        return opening;
    }

    public Task task() {
        return task;
    }
}
