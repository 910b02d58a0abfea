package drylap.ui.admin;

import static drylap.persistence.jooq.Tables.API_TOKEN;
import static drylap.persistence.jooq.Tables.HOOK;
import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.tokens.ApiTokens;
import drylap.tokens.Scope;
import drylap.tokens.TokenRequest;
import drylap.ui.planner.ViewTest;
import java.time.Clock;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Set;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What lets other programs in, as people of different roles look after it. */
@ViewTest
class ProgramsViewTests extends SpringBrowserlessTest {
    @Autowired
    private TestPeople people;

    @Autowired
    private ApiTokens tokens;

    @Autowired
    private Clock clock;

    @Autowired
    private DSLContext db;

    @BeforeEach
    void nothing_was_made() {
        db.deleteFrom(API_TOKEN).execute();
        db.deleteFrom(HOOK).execute();
    }

    @Test
    void a_token_is_made_shown_once_and_revoked() {
        var who = people.signIn(people.add(Role.WINDOW_CREW, Reach.of(Set.of(new SiteId("Q"))), "W1"));
        var view = open();
        assertThat(text(view)).contains("No token so far");
        press("Make a token");
        field("Name").setValue("office");
        choose("May", EnumSet.of(Scope.READ, Scope.MARKS));
        press("Make");

        String shown = find(Span.class).withClassName("secret").single().getText();
        assertThat(shown).startsWith("drylap_");
        var program = tokens.open(shown).orElseThrow();
        assertThat(program.person()).isEqualTo(who.id());
        press("Done");
        assertThat(text(view))
                .contains("office", "acts for " + who.name(), "mark lines of openings", "last used")
                .doesNotContain(shown);

        press("Revoke");
        assertThat(tokens.open(shown)).isEmpty();
        assertThat(text(view)).contains("revoked ");
    }

    @Test
    void what_cannot_be_is_said_in_the_dialog_and_nothing_is_made() {
        people.signIn(people.scheduler());
        open();
        press("Make a token");
        press("Make");

        assertThat(text(find(Dialog.class).single())).contains("the name has 0 characters; accepted: 1 to 80");
        assertThat(db.fetchCount(API_TOKEN)).isZero();
    }

    @Test
    void a_hook_is_made_with_its_secret_shown_once_and_ended() {
        people.signIn(people.scheduler());
        var view = open();
        press("Make a hook");
        field("Name").setValue("office");
        field("Address").setValue("http://office.example/told");
        press("Make");
        assertThat(text(find(Dialog.class).single())).contains("accepted: https://");

        field("Address").setValue("https://office.example/told");
        press("Make");
        assertThat(find(Span.class).withClassName("secret").single().getText()).hasSize(43);
        press("Done");
        assertThat(text(view)).contains("https://office.example/told", "told of openings released, accepted, returned");

        press("End");
        assertThat(text(view)).contains("No hook so far");
    }

    @Test
    void an_administrator_makes_a_token_for_another() {
        var crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");
        people.signIn(people.add(Role.ADMINISTRATOR, Reach.NOWHERE, null));
        open();
        press("Make a token");
        field("Name").setValue("van system");
        people(crew);
        press("Make");
        press("Done");
        assertThat(tokens.seenBy(crew))
                .singleElement()
                .satisfies(one -> assertThat(one.name()).isEqualTo("van system"));
    }

    @Test
    void others_see_their_own_only() {
        var crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");
        var ends = clock.instant().plus(Duration.ofDays(1));
        tokens.make(crew, new TokenRequest(crew.id(), "van system", EnumSet.of(Scope.READ), Reach.EVERYWHERE, ends));
        people.signIn(people.scheduler());

        assertThat(text(open())).doesNotContain("van system");
    }

    private Component open() {
        return navigate(ProgramsView.class);
    }

    @SuppressWarnings("unchecked")
    private void people(Person who) {
        Select<Person> select = (Select<Person>) find(Select.class).all().stream()
                .filter(one -> "For".equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
        select.setValue(who);
    }

    @SuppressWarnings("unchecked")
    private void choose(String label, Set<Scope> scopes) {
        CheckboxGroup<Scope> group = (CheckboxGroup<Scope>) find(CheckboxGroup.class).all().stream()
                .filter(one -> label.equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
        group.setValue(scopes);
    }

    private void press(String words) {
        test(find(Button.class).withText(words).single()).click();
    }

    private TextField field(String label) {
        return find(TextField.class).all().stream()
                .filter(field -> field.getLabel().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }
}
