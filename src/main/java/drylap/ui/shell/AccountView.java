package drylap.ui.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.spring.security.AuthenticationContext;
import drylap.calendars.CalendarLink;
import drylap.calendars.CalendarLinks;
import drylap.kernel.CrewId;
import drylap.kernel.Reading;
import drylap.kernel.SiteId;
import drylap.security.KeptOfPerson;
import drylap.security.Operation;
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
@Route(AccountView.ROUTE)
@Needs({})
class AccountView extends Div implements Spoken {
    static final String ROUTE = "account";

    private final transient People people;
    private final transient SignedIn signedIn;
    private final transient AuthenticationContext door;
    private final transient Speech say;

    AccountView(
            People people,
            SignIns signIns,
            SignedIn signedIn,
            AuthenticationContext door,
            CalendarLinks calendars,
            KeptOfPerson kept) {
        this.people = people;
        this.signedIn = signedIn;
        this.door = door;
        addClassName("account-view");
        Person who = signedIn.person();
        say = new Speech(who.reading());
        var password = new OwnPassword(people, signIns, signedIn, door);
        if (who.choosesPassword()) {
            add(passwordFirst(who, password));
            return;
        }
        add(new ReadingPanel(say, this::read), mine(who, password, kept));
        var crew = who.crew();
        if (crew != null && who.may(Operation.SEE_CALENDAR_LINKS)) add(calendars(crew, calendars.of(who, crew)));
    }

    /** Nothing else is here: they may nothing else until they have one. */
    private Div passwordFirst(Person who, OwnPassword password) {
        var why = new Paragraph(say.it(
                "Somebody else set this password for you. Choose one of your own: nothing else opens until then, and the one that was set lets you in for {0} days only.",
                SignIns.GIVEN_DAYS));
        why.addClassName("first");
        var panel = new Div(new H2(say.it("Choose a password, {0}", who.name())), why, password);
        panel.addClassName("panel");
        return panel;
    }

    private Div mine(Person who, OwnPassword password, KeptOfPerson kept) {
        var panel = new Div(
                new H2(who.name()),
                new Paragraph(say.it("Signs in as {0}.", who.signInName()) + " " + where(who)),
                password,
                new Paragraph(
                        say.it("Setting it, or signing out everywhere, ends all sessions of yours, this one too.")),
                new Button(say.it("Sign out everywhere"), _ -> signOutEverywhere()),
                // by its address: the screen is of another package, which knows this one
                new Anchor("programs", say.it("Other programs: tokens and hooks")),
                new Paragraph(
                        say.it(
                                "Whoever manages people can take you away from Drylap; a number then stands in place of your name.")),
                new KeptLink(say, kept, signedIn, who.id()));
        panel.addClassName("panel");
        return panel;
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

    private void signOutEverywhere() {
        Person who = signedIn.person();
        people.signOutEverywhere(who, who.id());
        door.logout();
    }
}
