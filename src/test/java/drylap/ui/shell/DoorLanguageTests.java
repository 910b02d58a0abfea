package drylap.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Language;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;

class DoorLanguageTests {
    private final MockHttpServletRequest request = new MockHttpServletRequest();

    private void browserAsksFor(String... languages) {
        request.setPreferredLocales(
                List.of(languages).stream().map(Locale::forLanguageTag).toList());
    }

    @Test
    void the_first_language_of_the_browser_that_is_one_of_ours_counts() {
        browserAsksFor("fr-CA", "es-MX", "en-US");
        assertThat(DoorLanguage.of(request)).isEqualTo(Language.SPANISH);
        browserAsksFor("en-US", "es");
        assertThat(DoorLanguage.of(request)).isEqualTo(Language.ENGLISH);
    }

    @Test
    void without_any_of_ours_it_is_english() {
        browserAsksFor("fr-CA");
        assertThat(DoorLanguage.of(request)).isEqualTo(Language.ENGLISH);
        assertThat(DoorLanguage.of(null)).isEqualTo(Language.ENGLISH);
    }

    @Test
    void what_was_chosen_at_the_door_comes_before_the_browser() {
        browserAsksFor("en-US");
        assertThat(DoorLanguage.chosen(request)).isEmpty();
        DoorLanguage.choose(request, Language.SPANISH);
        assertThat(DoorLanguage.chosen(request)).contains(Language.SPANISH);
        assertThat(DoorLanguage.of(request)).isEqualTo(Language.SPANISH);
    }
}
