package drylap.ui.planner;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import drylap.calendars.CalendarLinks;
import drylap.crews.AbsenceResult;
import drylap.crews.Absences;
import drylap.kernel.FolderId;
import drylap.pace.Paces;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.drawn.CrewsSheet;
import drylap.ui.drawn.FolderShown;
import drylap.ui.shell.Address;
import drylap.ui.shell.Desk;
import drylap.ui.shell.FolderView;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;

/** Which crews come on which days, and when they are away. */
@Route("crews")
@Needs(Operation.SEE_CREWS)
@Menu(title = "Crews", order = 5)
class CrewsView extends Div implements FolderView, Spoken {
    private final transient Absences absences;
    private final transient Paces paces;
    private final transient Person who;
    private final transient Desk desk;
    private final transient Speech say;
    private final transient CalendarPanel calendars;

    CrewsView(Absences absences, Paces paces, CalendarLinks links, Address address, SignedIn signedIn, Desk desk) {
        this.absences = absences;
        this.paces = paces;
        this.desk = desk;
        this.who = signedIn.person();
        this.say = new Speech(who.reading());
        this.calendars = new CalendarPanel(links, address, who, desk);
        addClassName("crews-view");
        add(Panels.empty(say));
    }

    @Override
    public String called() {
        return say.it("Crews");
    }

    @Override
    public void show(FolderShown shown) {
        removeAll();
        var hint = new Paragraph(say.it("An absence takes the crew out of the next plan. "
                + "Visits that are published stay until a new plan is."));
        hint.addClassName("hint");
        add(hint);
        var folder = shown.stored().id();
        for (var crew : CrewsSheet.of(say, shown, absences.of(who, folder)).crews()) add(panel(shown, crew));
        add(new PacePanel(paces, who, desk).of(shown));
    }

    private Section panel(FolderShown shown, CrewsSheet.OneCrew crew) {
        var folder = shown.stored().id();
        Section panel = Panels.panel("crew", crew.crew().value());
        var away = new Button(
                say.it("Add an absence"), _ -> new AbsenceDialog(absences, who, folder, crew, desk::refresh).open());
        away.setAriaLabel(say.it("Add an absence of crew {0}", crew.crew()));
        away.setVisible(who.may(Operation.CHANGE_ABSENCES));
        var days = new UnorderedList();
        days.addClassName("days");
        crew.days().forEach(day -> days.add(day(folder, crew, day)));
        var head = new Div(Panels.text(crew.trade()), away);
        head.addClassName("head");
        panel.add(head, days);
        shown.folder().crews().stream()
                .filter(one -> one.id().equals(crew.crew()))
                .forEach(one -> panel.add(calendars.of(folder, one)));
        return panel;
    }

    private ListItem day(FolderId folder, CrewsSheet.OneCrew crew, CrewsSheet.Day day) {
        var item = new ListItem(Panels.text(day.when(), "strong"), Panels.text(day.hours()));
        item.setClassName("off", !day.works());
        for (var away : day.away()) {
            var back = new Button(say.it("Withdraw"), _ -> withdraw(folder, away.id()));
            back.setAriaLabel(say.it("Withdraw the absence of crew {0} on {1}", crew.crew(), day.when()));
            back.setVisible(who.may(Operation.CHANGE_ABSENCES));
            var line = new Div(Panels.text(away.words()), back);
            line.addClassName("away");
            item.add(line);
        }
        return item;
    }

    private void withdraw(FolderId folder, long id) {
        Notification.show(
                switch (absences.withdraw(who, folder, id)) {
                    case AbsenceResult.Withdrawn(var absence) -> say.it("Crew {0} comes after all.", absence.crew());
                    case AbsenceResult.WithdrawnMeanwhile first -> say.it("{0} withdrew it meanwhile.", first.by());
                    case AbsenceResult.Refused(var why) -> say.it(why);
                    case AbsenceResult.Added _ -> "";
                });
        desk.refresh();
    }
}
