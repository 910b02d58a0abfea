package drylap.security;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is easy was chosen from common knowledge, without a list from outside. */
class EasyPasswordsTests {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Password1234",
                "qwertyuiop12",
                "drylapdrylap",
                "aaaaaaaaaaaa",
                "Welcome-2026",
                "123456789012",
                "0987654321!!",
                "MaraQuist2026",
                "quist.mara.1",
                "abcdefghijkl",
                "asdfASDFasdf",
                "Drylap-window",
                "contraseña123"
            })
    void what_is_tried_first_is_refused_with_what_is_accepted(String easy) {
        assertThat(Passwords.against(easy, "mara", "Mara Quist"))
                .get()
                .asString()
                .contains("easy to guess")
                .endsWith("accepted: 6 or more");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a long enough one",
                "for this test only",
                "correct horse battery",
                "mara walks to the quay",
                "xK7#pVt9!qLm",
                "sample-mara-of-the-harbour",
                "eight cold windows"
            })
    void what_somebody_made_up_is_taken(String password) {
        assertThat(Passwords.against(password, "mara", "Mara Quist")).isEmpty();
    }
}
