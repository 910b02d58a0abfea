package drylap.ui.planner;

import com.vaadin.flow.component.HasComponents;
import com.vaadin.flow.component.notification.Notification;
import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.planning.TaskWords;
import drylap.speech.Speech;
import drylap.ui.components.WeekSheet;
import drylap.ui.drawn.FolderShown;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Opens the panel of the visit that was chosen, or dragged, on a week sheet. */
final class VisitOpener {
    private final Speech say;
    private final HasComponents view;
    private final VisitDesk desk;
    private final Supplier<@Nullable FolderShown> shown;

    VisitOpener(
            Speech say, HasComponents view, WeekSheet sheet, VisitDesk desk, Supplier<@Nullable FolderShown> shown) {
        this.say = say;
        this.view = view;
        this.desk = desk;
        this.shown = shown;
        sheet.onVisitChosen(chosen -> open(chosen.opening(), chosen.task(), null));
        sheet.onVisitDropped(dropped -> open(
                dropped.opening(), dropped.task(), new VisitPlace(dropped.crew(), dropped.date(), dropped.start())));
    }

    /** The panel stands in the screen, so that it goes when someone leaves that. */
    private void open(OpeningId opening, Task task, @Nullable VisitPlace at) {
        FolderShown now = shown.get();
        if (now == null) return;
        var seen = desk.seen(now, opening, task);
        var trial = seen.flatMap(desk::attempt);
        if (seen.isEmpty() || trial.isEmpty()) {
            Notification.show(say.it("{0} is done, or no longer in this plan.", TaskWords.at(task, opening)));
            return;
        }
        var panel = new VisitPanel(
                say, desk, now, seen.get(), trial.get(), at, (was, place) -> open(was.opening(), was.task(), place));
        view.add(panel);
        panel.addOpenedChangeListener(event -> {
            if (!event.isOpened()) panel.removeFromParent();
        });
        panel.open();
    }
}
