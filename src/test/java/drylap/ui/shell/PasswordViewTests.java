package drylap.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.Language;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import drylap.security.FirstUse;
import drylap.security.NewPerson;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.speech.SpanishWords;
import drylap.speech.Speech;
import drylap.ui.ScreenTexts;
import drylap.ui.planner.ViewTest;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** How a password is chosen, and that nothing else opens to whoever has to. Numbers in brackets are requirements of OWASP ASVS 4.0.3. */
@ViewTest
class PasswordViewTests extends SpringBrowserlessTest {
    private static final String GIVEN = "eight cold kitchens hum";
    private static final String OWN = "seven warm ladders sing";

    @Autowired
    private TestPeople testPeople;

    @Autowired
    private People people;

    @Autowired
    private FirstUse first;

    private PersonId id = new PersonId(0);

    @BeforeEach
    void somebody_is_added() {
        id = people.add(
                testPeople.add(Role.ADMINISTRATOR, Reach.NOWHERE, null),
                new NewPerson("given." + UUID.randomUUID(), "Given Person", Role.SCHEDULER, Reach.EVERYWHERE, null),
                GIVEN);
    }

    private Person given() {
        return testPeople.signIn(testPeople.person(id));
    }

    private void type(String label, String password) {
        find(PasswordField.class).all().stream()
                .filter(one -> one.getLabel().equals(label))
                .findFirst()
                .orElseThrow()
                .setValue(password);
    }

    private Div bar() {
        return find(Div.class).withClassName("strength").single();
    }

    private static String screen() {
        return String.join("\n", ScreenTexts.now());
    }

    /** [2.1.8] */
    @Test
    void my_account_says_how_hard_the_new_password_is_to_guess_in_words_and_by_a_bar() {
        testPeople.signIn(testPeople.scheduler());
        navigate(AccountView.class);
        assertThat(find(Div.class).withClassName("strength").all()).noneMatch(Component::isVisible);

        type("New password", "rainrainrainrain");
        assertThat(bar().getElement().getAttribute("aria-valuenow")).isEqualTo("1");
        assertThat(bar().getElement().getAttribute("aria-valuetext")).isEqualTo("Too easy to guess");
        assertThat(screen()).contains("Too easy to guess", "what is repeated counts once", "accepted: for instance");

        type("New password", OWN);
        assertThat(bar().getElement().getAttribute("role")).isEqualTo("meter");
        assertThat(bar().getElement().getAttribute("aria-valuenow")).isEqualTo("4");
        assertThat(bar().getChildren()
                        .filter(one -> one.getElement().getClassList().contains("filled")))
                .hasSize(4);
        assertThat(screen()).contains("Very hard to guess").doesNotContain("what is repeated counts once");
        assertThat(bar().getParent().orElseThrow().getChildren())
                .as("what is read out with each change")
                .anyMatch(one -> "status".equals(one.getElement().getAttribute("role"))
                        && one.getElement().getTextRecursively().equals("Very hard to guess"));
    }

    @Test
    void a_password_that_is_easy_to_guess_is_refused_at_its_field() {
        var who = testPeople.signIn(testPeople.scheduler());
        navigate(AccountView.class);
        type("Password now", TestPeople.PASSWORD);
        type("New password", "estrella2024");
        test(find(Button.class).withText("Set the password").single()).click();

        assertThat(find(PasswordField.class).all())
                .filteredOn(PasswordField::isInvalid)
                .singleElement()
                .extracting(PasswordField::getErrorMessage)
                .asString()
                .contains("easy to guess: names do not count");
        assertThat(testPeople.person(who.id())).isEqualTo(who);
    }

    /** [2.3.1, 2.5.1] */
    @Test
    void whoever_has_to_choose_a_password_is_led_there_from_everywhere() {
        given();
        for (String address : List.of("", "week-sheet", "programs", "walls", "account")) {
            UI.getCurrent().navigate(address);
            assertThat(UI.getCurrent().getInternals().getActiveRouterTargetsChain())
                    .as(address)
                    .anyMatch(AccountView.class::isInstance);
        }
        assertThat(screen())
                .contains("Somebody else set this password for you. Choose one of your own", "for 7 days only")
                .doesNotContain("Sign out everywhere", "What is kept of this person");
        assertThat(find(RouterLink.class).all()).extracting(RouterLink::getHref).containsOnly("account");

        type("Password now", GIVEN);
        type("New password", GIVEN);
        test(find(Button.class).withText("Set the password").single()).click();
        assertThat(screen()).contains("this is the password that was set for you; accepted: another one");

        people.setPassword(testPeople.person(id), id, OWN);
        given();
        UI.getCurrent().navigate("walls");
        assertThat(UI.getCurrent().getInternals().getActiveRouterTargetsChain())
                .noneMatch(AccountView.class::isInstance);
    }

    @Test
    void whoever_reads_spanish_is_told_in_spanish() {
        var spanish = Reading.USUAL.in(Language.SPANISH);
        people.read(testPeople.person(id), spanish);
        var who = given();
        UI.getCurrent().navigate("walls");
        type("Contraseña nueva", "29.03.1984 29");

        var words = new SpanishWords(List.of("Given Person " + who.signInName()));
        assertThat(screen()).contains("Elija una contraseña", "las fechas y los años no cuentan");
        assertThat(ScreenTexts.now())
                .allSatisfy(text -> assertThat(words.strange(text)).isEmpty());

        var say = new Speech(spanish);
        var field = new NewPassword(say, say.it("Password"), () -> new String[0]);
        for (String password : List.of("short", "ä".repeat(40), "jennifer garcia", "another long password", OWN)) {
            field.getChildren()
                    .filter(PasswordField.class::isInstance)
                    .forEach(one -> ((PasswordField) one).setValue(password));
            assertThat(ScreenTexts.of(field))
                    .allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
        }
    }

    @Test
    void the_first_account_is_told_too_and_the_name_does_not_count() {
        var page = new FirstUseView(first, Speech.ENGLISH);
        all(page, TextField.class).forEach(one -> one.setValue("Varonduin Quistelberg"));
        all(page, PasswordField.class).forEach(one -> one.setValue("qu1st3lb3rg v4r0ndu1n"));

        assertThat(String.join("\n", ScreenTexts.of(page)))
                .contains("Nearly hard enough to guess", "names of the person");
    }

    private static <T extends Component> List<T> all(Component within, Class<T> type) {
        return descend(within).filter(type::isInstance).map(type::cast).toList();
    }

    private static Stream<Component> descend(Component one) {
        return Stream.concat(Stream.of(one), one.getChildren().flatMap(PasswordViewTests::descend));
    }
}
