package drylap.ui.shell;

import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import drylap.security.DemoPassword;
import drylap.security.Person;
import java.util.List;

/** The invented people of the sample data, whose passwords everybody may read; there are none beside real data. */
final class SamplePeople extends Section {
    SamplePeople(List<Person> people) {
        addClassName("sample-people");
        getElement().setAttribute("aria-label", "Sample people");
        var table = new NativeTable();
        table.getHead().add(row(true, "Name", "Password", "Who"));
        people.forEach(
                one -> table.getBody().add(row(false, one.signInName(), DemoPassword.of(one.signInName()), who(one))));
        add(
                new H2("Sample people"),
                new Paragraph("This Drylap holds invented data. Anybody may sign in as one of these."),
                table);
    }

    private static String who(Person one) {
        return one.crew() == null
                ? one.role().words()
                : "%s, %s".formatted(one.role().words(), one.crew().value());
    }

    private static NativeTableRow row(boolean head, String... cells) {
        var row = new NativeTableRow();
        for (String cell : cells) {
            if (head) {
                var top = new NativeTableHeaderCell(cell);
                top.getElement().setAttribute("scope", "col");
                row.add(top);
            } else row.add(new NativeTableCell(cell));
        }
        return row;
    }
}
