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
import drylap.speech.Speech;
import java.util.List;

/** The invented people of the sample data, whose passwords everybody may read; there are none beside real data. */
final class SamplePeople extends Section {
    SamplePeople(List<Person> people, Speech say) {
        addClassName("sample-people");
        getElement().setAttribute("aria-label", say.it("Sample people"));
        var table = new NativeTable();
        table.getHead().add(row(true, say.it("Name"), say.it("Password"), say.it("Who")));
        people.forEach(one ->
                table.getBody().add(row(false, one.signInName(), DemoPassword.of(one.signInName()), who(one, say))));
        add(
                new H2(say.it("Sample people")),
                new Paragraph(say.it("This Drylap holds invented data. Anybody may sign in as one of these.")),
                table);
    }

    private static String who(Person one, Speech say) {
        return one.crew() == null
                ? say.it(one.role().words())
                : "%s, %s".formatted(say.it(one.role().words()), one.crew().value());
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
