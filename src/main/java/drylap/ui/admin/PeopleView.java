package drylap.ui.admin;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.security.KeptOfPerson;
import drylap.security.Listed;
import drylap.security.Operation;
import drylap.security.People;
import drylap.security.PeopleTakenAway;
import drylap.security.Person;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.planner.Panels;
import drylap.ui.shell.Needs;
import drylap.ui.shell.Spoken;
import java.util.List;
import java.util.stream.Collectors;

/** Who may sign in, as what, and for which sites. */
@Route("people")
@Menu(title = "People", order = 90)
@Needs(Operation.SEE_PEOPLE)
class PeopleView extends Div implements Spoken {
    private final transient Speech say;
    private final transient People people;
    private final transient PeopleTakenAway away;
    private final transient KeptOfPerson kept;
    private final transient SignedIn signedIn;
    private final transient List<SiteId> sites;
    private final UnorderedList list = new UnorderedList();

    PeopleView(People people, SignedIn signedIn, JobFolders folders, PeopleTakenAway away, KeptOfPerson kept) {
        say = new Speech(signedIn.reading());
        this.people = people;
        this.away = away;
        this.kept = kept;
        this.signedIn = signedIn;
        this.sites = folders.knownSites();
        addClassName("people-view");
        list.addClassName("people");
        var add = new Button(
                say.it("Add a person"),
                _ -> PersonDialog.forNew(people, signedIn, sites, this::show).open());
        add.addThemeVariants(com.vaadin.flow.component.button.ButtonVariant.LUMO_PRIMARY);
        var programs = new RouterLink(say.it("Other programs"), ProgramsView.class);
        var ways = new Div(programs, add);
        ways.addClassName("head-ways");
        var head = new Div(new H2(say.it("People")), ways);
        head.addClassName("head");
        var panel = new Div(head, list, new SpreadsheetLink(say, "Drylap", say.it("People"), this::whole));
        panel.addClassName("panel");
        add(panel);
        show();
    }

    @Override
    public String called() {
        return say.it("People");
    }

    private void show() {
        list.removeAll();
        people.all(signedIn.person()).stream().map(this::item).forEach(list::add);
    }

    private NativeTable whole() {
        NativeTable table = Panels.table(
                say.it("Sign-in name"), say.it("Name"), say.it("Work"), say.it("Sites"), say.it("May sign in"));
        people.all(signedIn.person())
                .forEach(one -> Panels.row(
                        table,
                        Panels.text(one.person().signInName()),
                        Panels.text(one.person().name()),
                        Panels.text(work(one.person())),
                        Panels.text(sitesOf(one.person())),
                        Panels.text(one.active() ? say.it("yes") : "no")));
        return table;
    }

    private ListItem item(Listed listed) {
        Person one = listed.person();
        var name = new Span(one.name());
        name.addClassName("strong");
        var words = new Span("%s · %s".formatted(one.signInName(), work(one)));
        var where = new Span(sitesOf(one));
        var who = new Div(name, words, where);
        who.addClassName("who");
        if (one.demo()) who.add(note(say.it("sample")));
        if (!listed.active()) who.add(note(say.it(listed.takenAway() ? "taken away" : "signed off")));
        return listed.takenAway() ? new ListItem(who) : new ListItem(who, ways(listed));
    }

    private Div ways(Listed listed) {
        Person one = listed.person();
        var change = new Button(
                say.it("Change"),
                _ -> PersonDialog.forChange(people, signedIn, sites, listed, this::show)
                        .open());
        change.setAriaLabel(say.it("Change {0}", one.name()));
        var password = new Button(say.it("Password"), _ -> new PasswordDialog(people, signedIn, one).open());
        password.setAriaLabel(say.it("Password of {0}", one.name()));
        var out = new Button(say.it("Sign out everywhere"), _ -> signOut(one));
        out.setAriaLabel(say.it("Sign out everywhere: {0}", one.name()));
        var ways = new Div(change, password, out);
        if (!one.id().equals(signedIn.person().id())) {
            var gone = new Button(
                    say.it("Take away"), _ -> new TakeAwayDialog(away, kept, signedIn, listed, this::show).open());
            gone.setAriaLabel(say.it("Take away {0}", one.name()));
            ways.add(gone);
        }
        ways.addClassName("ways");
        return ways;
    }

    private void signOut(Person one) {
        people.signOutEverywhere(signedIn.person(), one.id());
        com.vaadin.flow.component.notification.Notification.show(say.it("{0} is signed out everywhere.", one.name()));
    }

    private static Span note(String words) {
        var note = new Span(words);
        note.addClassName("note");
        return note;
    }

    private String work(Person one) {
        return one.crew() == null
                ? say.it(one.role().words())
                : say.it("{0}, crew {1}", say.it(one.role().words()), one.crew().value());
    }

    private String sitesOf(Person one) {
        if (one.reach().everySite()) return say.it("every site");
        String named = one.reach().sites().stream().sorted().map(SiteId::value).collect(Collectors.joining(", "));
        return named.isEmpty() ? say.it("no site") : say.it("sites: {0}", named);
    }
}
