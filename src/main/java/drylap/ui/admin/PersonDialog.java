package drylap.ui.admin;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import drylap.kernel.ChangedMeanwhile;
import drylap.kernel.CrewId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.security.Listed;
import drylap.security.NewPerson;
import drylap.security.Passwords;
import drylap.security.People;
import drylap.security.Role;
import drylap.security.SignedIn;
import drylap.ui.shell.TroubleLine;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Adds a person or changes one. */
final class PersonDialog extends Dialog {
    private final transient People people;
    private final transient SignedIn signedIn;
    private final transient @Nullable Listed before;
    private final transient Runnable after;
    private final TextField signInName = new TextField("Sign-in name");
    private final TextField name = new TextField("Name");
    private final Select<Role> role = new Select<>();
    private final TextField crew = new TextField("Crew");
    private final Checkbox everySite = new Checkbox("Every site");
    private final CheckboxGroup<SiteId> sites = new CheckboxGroup<>("Sites");
    private final TextField moreSites = new TextField("Further sites, by id, with commas between");
    private final PasswordField password = new PasswordField("Password");
    private final Checkbox active = new Checkbox("May sign in", true);
    private final TroubleLine trouble = new TroubleLine();

    private PersonDialog(
            People people, SignedIn signedIn, Collection<SiteId> known, @Nullable Listed before, Runnable after) {
        this.people = people;
        this.signedIn = signedIn;
        this.before = before;
        this.after = after;
        role.setLabel("Role");
        role.setItems(Role.values());
        role.setItemLabelGenerator(Role::words);
        role.addValueChangeListener(event -> crew.setVisible(event.getValue().inCrew()));
        everySite.addValueChangeListener(event -> showSites(!event.getValue()));
        crew.setHelperText("as in the job folder, such as window-1");
        password.setHelperText("%d characters or more".formatted(Passwords.SHORTEST));
        var fields = new Div(signInName, name, role, crew, everySite, sites, moreSites);
        fields.addClassName("fields");
        fields.add(before == null ? password : active);
        add(fields, trouble);
        fill(known);
        var save = new Button("Save", _ -> save());
        save.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        getFooter().add(new Button("Cancel", _ -> close()), save);
    }

    static PersonDialog forNew(People people, SignedIn signedIn, List<SiteId> known, Runnable after) {
        var dialog = new PersonDialog(people, signedIn, known, null, after);
        dialog.setHeaderTitle("A new person");
        return dialog;
    }

    static PersonDialog forChange(People people, SignedIn signedIn, List<SiteId> known, Listed before, Runnable after) {
        var all = new TreeSet<>(known);
        all.addAll(before.person().reach().sites());
        var dialog = new PersonDialog(people, signedIn, all, before, after);
        dialog.setHeaderTitle("Change " + before.person().name());
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
            if (before == null) people.add(signedIn.person(), person, password.getValue());
            else people.change(signedIn.person(), before.person().id(), before.version(), person, active.getValue());
            close();
            after.run();
        } catch (IllegalArgumentException refused) {
            say(String.valueOf(refused.getMessage()));
        } catch (ChangedMeanwhile changed) {
            say(changed.getMessage() + ". Close this and look again; nothing was saved.");
        }
    }

    private void say(String words) {
        trouble.say(words);
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
