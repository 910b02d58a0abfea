package drylap.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.QueryParameters;
import drylap.kernel.Language;
import drylap.kernel.OpeningId;
import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.TestPeople;
import drylap.speech.SpanishWords;
import java.util.List;
import java.util.Set;
import org.springframework.beans.factory.annotation.Autowired;

/** What someone who reads Spanish does on a screen, and that nothing on it is English. */
abstract class SpanishScreen extends SpringBrowserlessTest {
    /** What the walls of the folder are called; to the catalogue the same words are ways that a wall faces. */
    private static final Set<String> WALLS = Set.of("west", "south");

    private final List<String> own = new java.util.ArrayList<>();

    @Autowired
    People keeper;

    @Autowired
    TestPeople people;

    final Person reads(Person who, Ruler ruler) {
        keeper.read(who, new Reading(Language.SPANISH, ruler));
        return people.signIn(people.person(who.id()));
    }

    final void isSpanish(String address, String... shown) {
        open(address);
        shows(shown);
    }

    final void isSpanish(String address, OpeningId opening, String... shown) {
        UI.getCurrent().navigate(address, QueryParameters.of("opening", opening.value()));
        shows(shown);
    }

    /** Names and the like on the screens of one test, beside those of every test. */
    final void knows(String... data) {
        own.addAll(List.of(data));
    }

    /** And nothing that is not Spanish. */
    final void shows(String... shown) {
        var texts = new java.util.ArrayList<>(ScreenTexts.now());
        find(Dialog.class).all().forEach(dialog -> texts.addAll(ScreenTexts.of(dialog)));
        String all = String.join("\n", texts).toLowerCase(java.util.Locale.ROOT);
        for (String one : shown) assertThat(all).contains(one.toLowerCase(java.util.Locale.ROOT));
        var words = new SpanishWords(
                java.util.stream.Stream.of(data(), own).flatMap(List::stream).toList());
        assertThat(texts.stream().map(this::withoutCodes))
                .filteredOn(text -> !WALLS.contains(text.strip()))
                .allSatisfy(text -> assertThat(words.strange(text)).isEmpty());
    }

    /** Commands and columns of files, which have no other name. */
    List<String> codes() {
        return List.of();
    }

    private String withoutCodes(String text) {
        String rest = text;
        for (String code : codes()) rest = rest.replace(code, "");
        return rest;
    }

    static List<String> data() {
        return List.of(
                "Quay Nine Mill Row west south II III QW MS America Los_Angeles",
                "Test window-crew follow-on tester scheduler administrator seis",
                "MB GB drylap backup",
                "quay bare harbour-week pace");
    }

    static void open(String address) {
        UI.getCurrent().navigate(address);
    }

    final void pressed(String words) {
        test(find(Button.class).all().stream()
                        .filter(one -> one.getText().equals(words))
                        .findFirst()
                        .orElseThrow())
                .click();
    }

    final void pressedFor(String label) {
        test(find(Button.class).withAriaLabel(label).single()).click();
    }

    final void typed(String label, String value) {
        test(find(TextField.class).all().stream()
                        .filter(one -> one.getLabel().equals(label))
                        .findFirst()
                        .orElseThrow())
                .setValue(value);
    }
}
