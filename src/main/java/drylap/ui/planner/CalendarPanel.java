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

    CalendarPanel(CalendarLinks links, Address address, Person who, Desk desk) {
        this.links = links;
        this.address = address;
        this.who = who;
        this.desk = desk;
    }

    Div of(FolderId folder, Crew crew) {
        var lines = CalendarLines.of(Speech.ENGLISH, links.of(who, crew.id()), crew.zone())
                .lines();
        var head = new Div(Panels.text(lines.isEmpty() ? "Calendar: no link" : "Calendar"));
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
        String words = "Make a calendar link" + (language == Language.ENGLISH ? "" : " in " + language.ownName());
        var make = new Button(words, _ -> link(folder, crew, language));
        make.setAriaLabel("%s for crew %s".formatted(words, crew));
        make.setVisible(who.may(Operation.CHANGE_CALENDAR_LINKS));
        return make;
    }

    private ListItem item(CrewId crew, CalendarLines.Line line) {
        var revoke = new Button("Revoke", _ -> revoke(crew, line.id()));
        revoke.setAriaLabel("Revoke the calendar %s of crew %s".formatted(line.words(), crew));
        revoke.setVisible(who.may(Operation.CHANGE_CALENDAR_LINKS));
        return new ListItem(Panels.text(line.words()), revoke);
    }

    private void link(FolderId folder, CrewId crew, Language language) {
        var made = links.make(who, folder, crew, who.reading().in(language));
        var base = address.of(VaadinServletRequest.getCurrent());
        new ShownOnce(
                        "Calendar of crew %s".formatted(crew),
                        "Whoever has it sees where this crew goes, without signing in: "
                                + "give it to the crew lead only, and revoke it when the phone is lost.",
                        base + made.path(),
                        "On the phone, add it as a calendar by address (a subscription), not as a file: "
                                + "then changes of the plan come by themselves.",
                        desk::refresh)
                .open();
    }

    private void revoke(CrewId crew, long id) {
        Notification.show(
                links.revoke(who, id)
                        ? "Revoked: whoever follows it gets nothing more. What phones of crew %s hold stays there."
                                .formatted(crew)
                        : "It was revoked meanwhile.");
        desk.refresh();
    }
}
