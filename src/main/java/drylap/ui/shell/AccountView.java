package drylap.ui.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.spring.security.AuthenticationContext;
import drylap.calendars.CalendarLink;
import drylap.calendars.CalendarLinks;
import drylap.kernel.CrewId;
import drylap.kernel.Reading;
import drylap.kernel.SiteId;
import drylap.security.KeptOfPerson;
import drylap.security.Operation;
import drylap.security.Passwords;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.SignIns;
import drylap.security.SignedIn;
import drylap.speech.Saying;
import drylap.speech.Speech;
import drylap.ui.drawn.CalendarLines;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;

/** What someone may change about their own way in. */
@Route("account")
@Needs({})
class AccountView extends Div implements Spoken {
    private final transient People people;
    private final transient SignIns signIns;
    private final transient SignedIn signedIn;
    private final transient AuthenticationContext door;
    private final transient Speech say;
    private final PasswordField old = new PasswordField();
    private final PasswordField fresh = new PasswordField();

    AccountView(
            People people,
            SignIns signIns,
            SignedIn signedIn,
            AuthenticationContext door,
            CalendarLinks calendars,
            KeptOfPerson kept) {
        this.people = people;
        this.signIns = signIns;
        this.signedIn = signedIn;
        this.door = door;
        addClassName("account-view");
        Person who = signedIn.person();
        say = new Speech(who.reading());
        old.setLabel(say.it("Password now"));
        fresh.setLabel(say.it("New password"));
        fresh.setHelperText(say.it("{0} characters or more", Passwords.SHORTEST));
        var set = new Button(say.it("Set the password"), _ -> setPassword());
        var out = new Button(say.it("Sign out everywhere"), _ -> signOutEverywhere());
        var panel = new Div(
                new H2(who.name()),
                new Paragraph(say.it("Signs in as {0}.", who.signInName()) + " " + where(who)),
                old,
                fresh,
                set,
                new Paragraph(
                        say.it("Setting it, or signing out everywhere, ends all sessions of yours, this one too.")),
                out,
                // by its address: the screen is of another package, which knows this one
                new Anchor("programs", say.it("Other programs: tokens and hooks")),
                new Paragraph(
                        say.it(
                                "Whoever manages people can take you away from Drylap; a number then stands in place of your name.")),
                new KeptLink(say, kept, signedIn, who.id()));
        panel.addClassName("panel");
        add(new ReadingPanel(say, this::read), panel);
        var crew = who.crew();
        if (crew != null && who.may(Operation.SEE_CALENDAR_LINKS)) add(calendars(crew, calendars.of(who, crew)));
    }

    /** Who leads a crew sees who may follow its calendar, though not the secrets: they are known to nobody. */
    private Div calendars(CrewId crew, List<CalendarLink> links) {
        var list = new UnorderedList();
        CalendarLines.of(say, links, ZoneId.systemDefault())
                .lines()
                .forEach(line -> list.add(new ListItem(line.words())));
        var hint = list.getComponentCount() == 0
                ? say.it(
                        "There is no link. The scheduler makes one, with which a phone's calendar follows the published plan.")
                : say.it("A lost phone? The scheduler revokes its link and makes another.");
        var panel = new Div(new H2(say.it("Calendar of crew {0}", crew)), list, new Paragraph(hint));
        panel.addClassNames("panel", "calendar");
        return panel;
    }

    @Override
    public String called() {
        return say.it("My account");
    }

    /** The page is fetched anew: all of it is in the language. */
    private void read(Reading reading) {
        people.read(signedIn.person(), reading);
        getUI().ifPresent(ui -> ui.getPage().reload());
    }

    private String where(Person who) {
        String work = who.crew() == null
                ? say.it(who.role().words())
                : say.it("{0} in crew {1}", Saying.of(who.role().words()), who.crew());
        String sites = who.reach().everySite()
                ? say.it("every site")
                : who.reach().sites().stream().sorted().map(SiteId::value).collect(Collectors.joining(", "));
        return say.it("Works as {0}; sites: {1}.", work, sites.isEmpty() ? say.it("none") : sites);
    }

    private void setPassword() {
        Person who = signedIn.person();
        var against = Passwords.against(fresh.getValue(), who.signInName(), who.name());
        fresh.setErrorMessage(against.map(say::it).orElse(""));
        fresh.setInvalid(against.isPresent());
        if (against.isPresent() || !isTheirs(who)) return;
        people.setPassword(who, who.id(), fresh.getValue());
        Notification.show(say.it("The password is set. Sign in with it."));
        door.logout();
    }

    private boolean isTheirs(Person who) {
        var outcome = signIns.confirm(who.id(), old.getValue());
        old.setErrorMessage(
                outcome instanceof SignIns.Outcome.Wait
                        ? say.it("Too many tries. Wait a quarter of an hour, then try again.")
                        : say.it("This is not the password."));
        old.setInvalid(!(outcome instanceof SignIns.Outcome.In));
        return !old.isInvalid();
    }

    private void signOutEverywhere() {
        Person who = signedIn.person();
        people.signOutEverywhere(who, who.id());
        door.logout();
    }
}
