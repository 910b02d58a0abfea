package drylap.ui.planner;

import com.vaadin.flow.component.select.Select;
import drylap.ui.shell.Unchanged;
import java.util.List;
import java.util.function.Function;

/** What a select offers, sent anew only where that or its words changed: a list that stays as it is also stays open. */
final class Offered<T> {
    private final Select<T> select;
    private final Unchanged sent = new Unchanged();

    Offered(Select<T> select) {
        this.select = select;
    }

    void show(List<T> items, Function<T, String> words) {
        if (sent.since(List.of(items, items.stream().map(words).toList()))) return;
        select.setItemLabelGenerator(item -> item == null ? select.getEmptySelectionCaption() : words.apply(item));
        select.setItems(items);
    }
}
