package drylap.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.html.Div;
import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.security.FirstUse;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.Role;
import drylap.speech.SpanishWords;
import drylap.speech.Speech;
import drylap.ui.ScreenTexts;
import drylap.ui.planner.ViewTest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The sign-in page as whoever reads Spanish sees it. */
@ViewTest
class SpanishDoorViewTests extends SpringBrowserlessTest {
    @Autowired
    private People people;

    @Autowired
    private FirstUse first;

    @Test
    void the_door_holds_no_english() {
        var say = new Speech(Reading.USUAL.in(Language.SPANISH));
        var who = new Person(
                new drylap.kernel.PersonId(1),
                "mara",
                "Mara",
                Role.WINDOW_CREW,
                drylap.kernel.Reach.NOWHERE,
                new drylap.kernel.CrewId("W1"),
                true);
        var texts = ScreenTexts.of(new Div(new SignInView(people, first, say), new SamplePeople(List.of(who), say)));

        assertThat(texts).contains("Entrar", "Contraseña", "English", "Español", "Personas de ejemplo");
        var words = new SpanishWords(List.of("mara sample-mara-of-the-harbour"));
        assertThat(texts).allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
    }

    @Test
    void the_first_use_of_an_empty_database_holds_no_english() {
        var say = new Speech(Reading.USUAL.in(Language.SPANISH));
        var texts = ScreenTexts.of(new FirstUseView(first, say));

        assertThat(texts).contains("Todavía nadie puede entrar", "Crear la primera cuenta", "Español");
        var words = new SpanishWords(List.of("First sign-in"));
        assertThat(texts).allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
    }
}
