package drylap.ui.planner;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.spring.annotation.SpringComponent;
import drylap.handoff.Bookings;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.drawn.BookedBesidePlan;
import drylap.ui.drawn.FolderShown;
import drylap.ui.shell.Unchanged;
import java.time.Clock;
import java.util.List;
import org.springframework.context.annotation.Scope;

/** On which days follow-on crews say that they will come; nothing at all where none does. */
@SpringComponent
@Scope("prototype")
final class BookedPanel extends Div {
    private final transient Bookings bookings;
    private final transient Person who;
    private final transient Clock clock;
    private final transient Unchanged drawn = new Unchanged();
    private final transient Speech say;

    BookedPanel(Bookings bookings, SignedIn signedIn, Clock clock) {
        this.bookings = bookings;
        this.clock = clock;
        who = signedIn.person();
        say = new Speech(who.reading());
        setVisible(false);
    }

    void show(FolderShown shown) {
        var booked =
                BookedBesidePlan.of(say, shown, bookings.of(who, shown.stored().id()), clock.instant());
        if (drawn.since(List.of(shown.name(), booked))) return;
        removeAll();
        setVisible(!booked.rows().isEmpty());
        if (booked.rows().isEmpty()) return;
        var panel = Panels.panel("booked-days", say.it("Booked crew-days"));
        panel.add(new Paragraph(say.it("Days on which a follow-on crew says that it will come. They bind no plan.")));
        NativeTable table = Panels.table(
                say.it("Day"),
                say.it("Crew"),
                say.it("Site"),
                say.it("In the plan below"),
                say.it("Booked by"),
                say.it("Note"));
        for (BookedBesidePlan.Row row : booked.rows())
            Panels.row(
                    table,
                    Panels.day(row.day(), row.date(), "strong"),
                    Panels.text(row.crew()),
                    Panels.text(row.site()),
                    Panels.text(row.plan()),
                    Panels.text(row.by()),
                    Panels.text(row.note()));
        panel.add(table, new SpreadsheetLink(say, shown.name(), say.it("Booked crew-days"), table));
        add(panel);
    }
}
