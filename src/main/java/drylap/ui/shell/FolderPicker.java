package drylap.ui.shell;

import com.vaadin.flow.component.select.Select;
import drylap.planning.StoredFolder;
import drylap.speech.Speech;
import java.util.List;

/** Chooses the folder on the table; hidden while there is no choice. */
final class FolderPicker extends Select<StoredFolder> {
    private final transient Desk desk;
    private final transient Unchanged items = new Unchanged();

    FolderPicker(Desk desk, Speech say) {
        this.desk = desk;
        setAriaLabel(say.it("Job folder"));
        addClassName("folder-picker");
        setItemLabelGenerator(folder ->
                say.it("{0} ({1, plural, one {# opening} other {# openings}})", folder.name(), folder.openings()));
        addValueChangeListener(event -> {
            if (event.isFromClient() && event.getValue() != null)
                desk.open(event.getValue().id());
        });
    }

    void refresh() {
        List<StoredFolder> folders = desk.isTheirs() ? desk.folders() : List.of();
        if (!items.since(folders)) setItems(folders);
        setVisible(!folders.isEmpty());
        desk.shown().ifPresent(shown -> setValue(shown.stored()));
    }
}
