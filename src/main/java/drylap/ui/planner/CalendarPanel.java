package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.server.VaadinServletRequest;
import drylap.calendars.CalendarLinks;
import drylap.crews.Crew;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Language;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.speech.Speech;
import drylap.ui.drawn.CalendarLines;
import drylap.ui.shell.Address;
import drylap.ui.shell.Desk;
import drylap.ui.shell.ShownOnce;

/** The links to a crew's calendar: made, shown once, revoked. */
final class CalendarPanel {
    private final CalendarLinks links;
    private final Address address;
    private final Person who;
    private final Desk desk;
    private final Speech say;

    CalendarPanel(CalendarLinks links, Address address, Person who, Desk desk) {
        this.links = links;
        this.address = address;
        this.who = who;
        this.desk = desk;
        say = new Speech(who.reading());
    }

    Div of(FolderId folder, Crew crew) {
        var lines = CalendarLines.of(say, links.of(who, crew.id()), crew.zone()).lines();
        var head = new Div(Panels.text(say.it(lines.isEmpty() ? "Calendar: no link" : "Calendar")));
        for (var language : Language.values()) head.add(make(folder, crew.id(), language));
        head.addClassName("head");
        var list = new UnorderedList();
        lines.forEach(line -> list.add(item(crew.id(), line)));
        var panel = new Div(head, list);
        panel.addClassName("calendar");
        return panel;
    }

    /** A crew follows its calendar in its own language, by the ruler of whoever makes the link. */
    private Button make(FolderId folder, CrewId crew, Language language) {
        String words = language == Language.ENGLISH
                ? say.it("Make a calendar link")
                : say.it("Make a calendar link in {0}", language.ownName());
        var make = new Button(words, _ -> link(folder, crew, language));
        make.setAriaLabel(say.it("{0} for crew {1}", words, crew));
        make.setVisible(who.may(Operation.CHANGE_CALENDAR_LINKS));
        return make;
    }

    private ListItem item(CrewId crew, CalendarLines.Line line) {
        var revoke = new Button(say.it("Revoke"), _ -> revoke(crew, line.id()));
        revoke.setAriaLabel(say.it("Revoke the calendar {0} of crew {1}", line.words(), crew));
        revoke.setVisible(who.may(Operation.CHANGE_CALENDAR_LINKS));
        return new ListItem(Panels.text(line.words()), revoke);
    }

    private void link(FolderId folder, CrewId crew, Language language) {
        var made = links.make(who, folder, crew, who.reading().in(language));
        var base = address.of(VaadinServletRequest.getCurrent());
        new ShownOnce(
                        say,
                        say.it("Calendar of crew {0}", crew),
                        say.it("Whoever has it sees where this crew goes, without signing in: "
                                + "give it to the crew lead only, and revoke it when the phone is lost."),
                        base + made.path(),
                        say.it("On the phone, add it as a calendar by address (a subscription), not as a file: "
                                + "then changes of the plan come by themselves."),
                        desk::refresh)
                .open();
    }

    private void revoke(CrewId crew, long id) {
        Notification.show(
                links.revoke(who, id)
                        ? say.it(
                                "Revoked: whoever follows it gets nothing more. What phones of crew {0} hold stays there.",
                                crew)
                        : say.it("It was revoked meanwhile."));
        desk.refresh();
    }
}
