package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;
import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import java.time.LocalDate;
import java.time.LocalTime;

/** A person dragged a visit to another place of the sheet; nothing has moved yet. */
@DomEvent("visit-dropped")
public final class VisitDropped extends ComponentEvent<Component> {
    private static final int LAST_MINUTE = 1439;

    private final OpeningId opening;
    private final Task task;
    private final CrewId crew;
    private final LocalDate date;
    private final LocalTime start;

    public VisitDropped(
            Component source,
            boolean fromClient,
            @EventData("event.detail.opening") String opening,
            @EventData("event.detail.task") String task,
            @EventData("event.detail.crew") String crew,
            @EventData("event.detail.date") String date,
            @EventData("event.detail.minute") int minute) {
        super(source, fromClient);
        this.opening = new OpeningId(opening);
        this.task = Coded.of(Task.class, task);
        this.crew = new CrewId(crew);
        this.date = LocalDate.parse(date);
        start = LocalTime.MIN.plusMinutes(Math.clamp(minute, 0, LAST_MINUTE));
    }

    public OpeningId opening() {
        return opening;
    }

    public Task task() {
        return task;
    }

    public CrewId crew() {
        return crew;
    }

    public LocalDate date() {
        return date;
    }

    /** By the crew's clock. */
    public LocalTime start() {
        return start;
    }
}
