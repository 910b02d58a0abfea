package drylap.ui.planner;

import com.vaadin.flow.component.ItemLabelGenerator;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.crews.Shift;
import drylap.speech.Saying;
import drylap.ui.drawn.FolderShown;
import drylap.ui.drawn.Words;
import drylap.whatif.Change;
import java.time.LocalDate;
import java.util.List;

/** The questions of one kind of change. */
abstract class ChangeFields extends Div {
    ChangeFields() {
        addClassName("asked");
    }

    /** Offers what the folder has; what is chosen already stays. */
    abstract void offer(FolderShown shown);

    abstract Change read(FolderShown shown) throws WrongField;

    static <T> Select<T> select(String label) {
        var select = new Select<T>();
        select.setLabel(label);
        return select;
    }

    static Select<LocalDate> daySelect(String label) {
        Select<LocalDate> days = select(label);
        days.setItemLabelGenerator(date -> "%s %s".formatted(Words.weekday(date), Words.date(date)));
        return days;
    }

    static List<LocalDate> days(FolderShown shown) {
        return shown.folder().shifts().stream()
                .map(Shift::date)
                .distinct()
                .sorted()
                .toList();
    }

    /** A list that stays as it is also stays open, and keeps its choice. */
    static <T> void fill(Select<T> select, List<T> items) {
        if (select.getListDataView().getItems().toList().equals(items)) return;
        T before = select.getValue();
        select.setItems(items);
        select.setValue(before != null && items.contains(before) ? before : items.isEmpty() ? null : items.getFirst());
    }

    static <T> void fill(Select<T> select, List<T> items, ItemLabelGenerator<T> words) {
        select.setItemLabelGenerator(item -> item == null ? "" : words.apply(item));
        fill(select, items);
    }

    static <T> T chosen(Select<T> select) throws WrongField {
        if (select.isEmpty())
            throw new WrongField(
                    select.getLabel(), Saying.of("nothing is chosen"), Saying.of("choose one of the list"));
        return select.getValue();
    }

    static int whole(TextField field, int least, int most) throws WrongField {
        Saying accepted = Saying.of("a whole number from {0} to {1} is accepted", least, most);
        String text = field.getValue().strip();
        if (text.isEmpty()) throw new WrongField(field.getLabel(), Saying.of("is blank"), accepted);
        try {
            int value = Integer.parseInt(text.replace('\u2212', '-'));
            if (value >= least && value <= most) return value;
            throw new WrongField(field.getLabel(), Saying.of("{0} is outside", value), accepted);
        } catch (NumberFormatException notANumber) {
            throw new WrongField(field.getLabel(), Saying.of("''{0}'' is no whole number", text), accepted);
        }
    }

    static String text(TextField field, int longest, String accepted) throws WrongField {
        String text = field.getValue().strip();
        if (text.isEmpty()) throw new WrongField(field.getLabel(), "is blank", accepted);
        if (text.length() > longest)
            throw new WrongField(field.getLabel(), "has %d characters".formatted(text.length()), accepted);
        return text;
    }
}
