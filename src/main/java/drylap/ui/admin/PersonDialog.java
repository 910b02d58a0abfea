package drylap.ui.admin;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.kernel.ChangedMeanwhile;
import drylap.kernel.CrewId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.security.Listed;
import drylap.security.NewPerson;
import drylap.security.People;
import drylap.security.Role;
import drylap.security.SignedIn;
import drylap.speech.Speech;
import drylap.speech.Unfit;
import drylap.ui.shell.NewPassword;
import drylap.ui.shell.TroubleLine;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Adds a person or changes one. */
final class PersonDialog extends Dialog {
    private final transient Speech say;
    private final transient People people;
    private final transient SignedIn signedIn;
    private final transient @Nullable Listed before;
    private final transient Runnable after;
    private final TextField signInName = new TextField();
    private final TextField name = new TextField();
    private final Select<Role> role = new Select<>();
    private final TextField crew = new TextField();
    private final Checkbox everySite = new Checkbox();
    private final CheckboxGroup<SiteId> sites = new CheckboxGroup<>();
    private final TextField moreSites = new TextField();
    private final NewPassword password;
    private final Checkbox active = new Checkbox(true);
    private final TroubleLine trouble = new TroubleLine();

    private PersonDialog(
            People people, SignedIn signedIn, Collection<SiteId> known, @Nullable Listed before, Runnable after) {
        say = new Speech(signedIn.reading());
        this.people = people;
        this.signedIn = signedIn;
        this.before = before;
        this.after = after;
        password =
                new NewPassword(say, say.it("Password"), () -> new String[] {signInName.getValue(), name.getValue()});
        label();
        role.setItems(Role.values());
        role.setItemLabelGenerator(one -> say.it(one.words()));
        role.addValueChangeListener(event -> crew.setVisible(event.getValue().inCrew()));
        everySite.addValueChangeListener(event -> showSites(!event.getValue()));
        var fields = new Div(signInName, name, role, crew, everySite, sites, moreSites);
        fields.addClassName("fields");
        if (before == null) fields.add(password, PasswordDialog.given(say));
        else fields.add(active);
        add(fields, trouble);
        fill(known);
        var save = new Button(say.it("Save"), _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button(say.it("Cancel"), _ -> close()), save);
    }

    private void label() {
        signInName.setLabel(say.it("Sign-in name"));
        name.setLabel(say.it("Name"));
        role.setLabel(say.it("Role"));
        crew.setLabel(say.it("Crew"));
        crew.setHelperText(say.it("as in the job folder, such as {0}", "window-1"));
        everySite.setLabel(say.it("Every site"));
        sites.setLabel(say.it("Sites"));
        moreSites.setLabel(say.it("Further sites, by id, with commas between"));
        active.setLabel(say.it("May sign in"));
    }

    static PersonDialog forNew(People people, SignedIn signedIn, List<SiteId> known, Runnable after) {
        var dialog = new PersonDialog(people, signedIn, known, null, after);
        dialog.setHeaderTitle(dialog.say.it("A new person"));
        return dialog;
    }

    static PersonDialog forChange(People people, SignedIn signedIn, List<SiteId> known, Listed before, Runnable after) {
        var all = new TreeSet<>(known);
        all.addAll(before.person().reach().sites());
        var dialog = new PersonDialog(people, signedIn, all, before, after);
        dialog.setHeaderTitle(dialog.say.it("Change {0}", before.person().name()));
        return dialog;
    }

    private void fill(Collection<SiteId> known) {
        sites.setItems(known);
        role.setValue(Role.WINDOW_CREW);
        if (before == null) return;
        var one = before.person();
        signInName.setValue(one.signInName());
        name.setValue(one.name());
        role.setValue(one.role());
        crew.setValue(one.crew() == null ? "" : one.crew().value());
        everySite.setValue(one.reach().everySite());
        sites.setValue(one.reach().sites());
        active.setValue(before.active());
    }

    private void showSites(boolean some) {
        sites.setVisible(some);
        moreSites.setVisible(some);
    }

    private void save() {
        try {
            var person = person();
            if (before == null) people.add(signedIn.person(), person, password.value());
            else people.change(signedIn.person(), before.person().id(), before.version(), person, active.getValue());
            close();
            after.run();
        } catch (IllegalArgumentException refused) {
            trouble.say(say.it(Unfit.saying(refused)));
        } catch (ChangedMeanwhile changed) {
            trouble.say(say.it(
                    "{0} was changed since you looked at it. Close this and look again; nothing was saved.",
                    name.getValue().strip()));
        }
    }

    private NewPerson person() {
        String crewName = crew.getValue().strip();
        return new NewPerson(
                signInName.getValue(),
                name.getValue(),
                role.getValue(),
                everySite.getValue() ? Reach.EVERYWHERE : Reach.of(chosen()),
                role.getValue().inCrew() && !crewName.isEmpty() ? new CrewId(crewName) : null);
    }

    private TreeSet<SiteId> chosen() {
        var chosen = new TreeSet<>(sites.getValue());
        for (String id : moreSites.getValue().split(",")) if (!id.isBlank()) chosen.add(new SiteId(id.strip()));
        return chosen;
    }
}
