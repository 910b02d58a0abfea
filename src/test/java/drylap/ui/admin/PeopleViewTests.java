package drylap.ui.admin;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.ListItem;
import drylap.kernel.Language;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.planner.ViewTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Who may sign in, as whoever manages people looks after it. */
@ViewTest
class PeopleViewTests extends SpringBrowserlessTest {
    @Autowired
    private TestPeople testPeople;

    @Autowired
    private People people;

    private Person gone() {
        return testPeople.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");
    }

    private void press(String aria) {
        test(find(Button.class).all().stream()
                        .filter(button ->
                                button.getAriaLabel().filter(aria::equals).isPresent())
                        .findFirst()
                        .orElseThrow())
                .click();
    }

    private String dialog() {
        return find(Dialog.class).single().getElement().getTextRecursively();
    }

    private void confirm(String words) {
        test(find(Button.class).withText(words).single()).click();
    }

    @Test
    void somebody_is_taken_away_after_a_look_at_what_that_changes() {
        var gone = gone();
        testPeople.signIn(testPeople.add(Role.ADMINISTRATOR, Reach.NOWHERE, null));
        navigate(PeopleView.class);

        press("Take away " + gone.name());
        assertThat(dialog())
                .contains("“person %d” will stand in place".formatted(gone.id().value()), "Backups keep the name")
                .contains("What is kept of this person (JSON)");
        assertThat(testPeople.person(gone.id()).name()).isEqualTo(gone.name());
        confirm("Take away for good");

        assertThat(testPeople.person(gone.id()).name())
                .isEqualTo("person " + gone.id().value());
        assertThat(find(ListItem.class).all().stream()
                        .map(one -> one.getElement().getTextRecursively()))
                .noneMatch(line -> line.contains(gone.name()))
                .anyMatch(line -> line.contains("taken away") && !line.contains("Password"));
    }

    @Test
    void nobody_is_offered_to_take_themselves_away() {
        var me = testPeople.signIn(testPeople.add(Role.ADMINISTRATOR, Reach.NOWHERE, null));
        navigate(PeopleView.class);

        assertThat(find(Button.class).all().stream().flatMap(button -> button.getAriaLabel().stream()))
                .contains("Password of " + me.name())
                .doesNotContain("Take away " + me.name());
    }

    @Test
    void whoever_reads_spanish_is_told_in_spanish() {
        var gone = gone();
        var me = testPeople.add(Role.ADMINISTRATOR, Reach.NOWHERE, null);
        people.read(me, Reading.USUAL.in(Language.SPANISH));
        testPeople.signIn(testPeople.person(me.id()));
        navigate(PeopleView.class);

        press("Quitar a " + gone.name());
        assertThat(dialog()).contains("ocupará el lugar del nombre", "Las copias de seguridad guardan el nombre");
    }
}
