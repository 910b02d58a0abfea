package drylap.ui.followon;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.sites.Site;
import drylap.speech.Speech;
import drylap.ui.drawn.BookedDays;
import drylap.ui.planner.Panels;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Booked crew-days; whoever has a crew of the follow-on trade books and takes back its own. */
public final class BookedDaysPanel extends Div {
    private final transient Speech say;
    private final transient Desk desk;
    private final UnorderedList list = new UnorderedList();
    private final Div form = new Div();
    private final Select<Site> site = new Select<>();
    private final Select<LocalDate> day = new Select<>();
    private final TextField note = new TextField();
    private transient @Nullable BookedDays shown;

    /** What becomes of the buttons; the panel is to be shown anew afterwards. */
    public interface Desk {
        void book(Site site, LocalDate day, String note);

        void takeBack(BookedDays.Row row);
    }

    public BookedDaysPanel(Speech say, Desk desk) {
        this.say = say;
        this.desk = desk;
        addClassName("booked");
        Section panel = Panels.panel("booked-panel", say.it("Booked crew-days"));
        panel.add(list, fields());
        add(panel);
    }

    /** Leaves what a person has begun to fill in. */
    public void show(BookedDays now) {
        if (now.equals(shown)) return;
        shown = now;
        list.removeAll();
        now.rows().forEach(row -> list.add(item(row)));
        if (now.rows().isEmpty()) list.add(new ListItem(say.it("No day is booked.")));
        form.setVisible(!now.sites().isEmpty());
        keep(site, now.sites());
        keep(day, now.days());
        site.setVisible(now.sites().size() > 1);
    }

    private static <T> void keep(Select<T> select, java.util.List<T> items) {
        T before = select.getValue();
        select.setItems(items);
        if (before != null && items.contains(before)) select.setValue(before);
        else if (!items.isEmpty()) select.setValue(items.getFirst());
    }

    private Div fields() {
        site.setLabel(say.it("Site"));
        site.setItemLabelGenerator(Site::name);
        day.setLabel(say.it("Day"));
        day.setItemLabelGenerator(say::day);
        note.setLabel(say.it("Note"));
        note.setMaxLength(200);
        var book = new Button(say.it("Book the day"), _ -> book());
        form.add(site, day, note, book);
        form.addClassName("fields");
        form.setVisible(false);
        return form;
    }

    private void book() {
        if (site.getValue() == null || day.getValue() == null) return;
        desk.book(site.getValue(), day.getValue(), note.getValue());
        note.clear();
    }

    private ListItem item(BookedDays.Row row) {
        var item = new ListItem(Panels.text(row.words(), "strong"), Panels.text(say.it("by {0}", row.by())));
        if (!row.note().isBlank()) item.add(new Paragraph(row.note()));
        if (row.own()) {
            var back = new Button(say.it("Take back"), _ -> desk.takeBack(row));
            back.setAriaLabel(say.it("Take back {0}", row.words()));
            item.add(back);
        }
        return item;
    }
}
