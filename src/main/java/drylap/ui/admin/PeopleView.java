package drylap.ui.admin;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
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
import drylap.ui.components.SpreadsheetLink;
import drylap.ui.planner.Panels;
import drylap.ui.shell.Needs;
import java.util.List;
import java.util.stream.Collectors;

/** Who may sign in, as what, and for which sites. */
@Route("people")
@PageTitle("People · Drylap")
@Menu(title = "People", order = 90)
@Needs(Operation.SEE_PEOPLE)
class PeopleView extends Div {
    private final transient People people;
    private final transient PeopleTakenAway away;
    private final transient KeptOfPerson kept;
    private final transient SignedIn signedIn;
    private final transient List<SiteId> sites;
    private final UnorderedList list = new UnorderedList();

    PeopleView(People people, SignedIn signedIn, JobFolders folders, PeopleTakenAway away, KeptOfPerson kept) {
        this.people = people;
        this.away = away;
        this.kept = kept;
        this.signedIn = signedIn;
        this.sites = folders.knownSites();
        addClassName("people-view");
        list.addClassName("people");
        var add = new Button(
                "Add a person",
                _ -> PersonDialog.forNew(people, signedIn, sites, this::show).open());
        add.addThemeVariants(com.vaadin.flow.component.button.ButtonVariant.LUMO_PRIMARY);
        var programs = new RouterLink("Other programs", ProgramsView.class);
        var ways = new Div(programs, add);
        ways.addClassName("head-ways");
        var head = new Div(new H2("People"), ways);
        head.addClassName("head");
        var panel = new Div(head, list, new SpreadsheetLink("Drylap", "People", this::whole));
        panel.addClassName("panel");
        add(panel);
        show();
    }

    private void show() {
        list.removeAll();
        people.all(signedIn.person()).stream().map(this::item).forEach(list::add);
    }

    private NativeTable whole() {
        NativeTable table = Panels.table("Sign-in name", "Name", "Work", "Sites", "May sign in");
        people.all(signedIn.person())
                .forEach(one -> Panels.row(
                        table,
                        Panels.text(one.person().signInName()),
                        Panels.text(one.person().name()),
                        Panels.text(work(one.person())),
                        Panels.text(sitesOf(one.person())),
                        Panels.text(one.active() ? "yes" : "no")));
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
        if (one.demo()) who.add(note("sample"));
        if (!listed.active()) who.add(note(listed.takenAway() ? "taken away" : "signed off"));
        return listed.takenAway() ? new ListItem(who) : new ListItem(who, ways(listed));
    }

    private Div ways(Listed listed) {
        Person one = listed.person();
        var change = new Button(
                "Change",
                _ -> PersonDialog.forChange(people, signedIn, sites, listed, this::show)
                        .open());
        change.setAriaLabel("Change " + one.name());
        var password = new Button("Password", _ -> new PasswordDialog(people, signedIn, one).open());
        password.setAriaLabel("Password of " + one.name());
        var out = new Button("Sign out everywhere", _ -> signOut(one));
        out.setAriaLabel("Sign out everywhere: " + one.name());
        var ways = new Div(change, password, out);
        if (!one.id().equals(signedIn.person().id())) {
            var gone =
                    new Button("Take away", _ -> new TakeAwayDialog(away, kept, signedIn, listed, this::show).open());
            gone.setAriaLabel("Take away " + one.name());
            ways.add(gone);
        }
        ways.addClassName("ways");
        return ways;
    }

    private void signOut(Person one) {
        people.signOutEverywhere(signedIn.person(), one.id());
        com.vaadin.flow.component.notification.Notification.show(one.name() + " is signed out everywhere.");
    }

    private static Span note(String words) {
        var note = new Span(words);
        note.addClassName("note");
        return note;
    }

    private static String work(Person one) {
        return one.crew() == null
                ? one.role().words()
                : "%s, crew %s".formatted(one.role().words(), one.crew().value());
    }

    private static String sitesOf(Person one) {
        if (one.reach().everySite()) return "every site";
        String named = one.reach().sites().stream().sorted().map(SiteId::value).collect(Collectors.joining(", "));
        return named.isEmpty() ? "no site" : "sites: " + named;
    }
}
