package drylap.security;

import static org.assertj.core.api.Assertions.assertThat;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers in brackets are requirements of OWASP ASVS 4.0.3. */
class GuessedPasswordsTests {
    /** The list of zxcvbn: 30,000 passwords, most of them from leaks that were made public (its README, "data"). */
    private static final String LEAKED = "/com/nulabinc/zxcvbn/matchers/dictionaries/passwords.txt";

    private static final String[] NOBODY = {"somebody", "Some Body"};

    /** [2.1.7] */
    @Test
    void every_leaked_password_that_is_long_enough_is_refused() throws IOException {
        List<String> leaked;
        try (var in = Objects.requireNonNull(Zxcvbn.class.getResourceAsStream(LEAKED));
                var lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            leaked = lines.lines()
                    .filter(one -> one.length() >= Passwords.SHORTEST)
                    .toList();
        }

        assertThat(leaked)
                .hasSizeGreaterThan(200)
                .allSatisfy(one ->
                        assertThat(Passwords.against(one, NOBODY)).as(one).isPresent());
    }

    /** [2.1.7] None of these falls to a rule of our own; the kind of each was read in what zxcvbn says of it. */
    @ParameterizedTest
    @CsvSource({
        "1q2w3e4r5t6y, came to light",
        "6yhn7ujm8ik!, came to light",
        "gandalf gandalf, came to light",
        "estrella2024, names do not count",
        "jennifer garcia, names do not count",
        "29.03.1984 29, dates and years",
        "rainrainrainrain, repeated counts once",
        "acegikmoqsuw, in their order"
    })
    void what_is_found_soon_is_refused_with_the_reason_and_what_would_do(String password, String why) {
        var judged = Passwords.judge(password, NOBODY);

        assertThat(judged.strength()).isIn(Strength.EASY, Strength.NEARLY);
        assertThat(judged.against())
                .get()
                .asString()
                .startsWith("the password is easy to guess: ")
                .contains(why)
                .endsWith("; accepted: for instance four words that have nothing to do with each other");
    }

    @Test
    void a_name_written_with_digits_counts_for_its_person_only() {
        String password = "qu1st3lb3rg v4r0ndu1n";

        assertThat(Passwords.against(password, NOBODY)).isEmpty();
        assertThat(Passwords.against(password, "v", "Varonduin Quistelberg"))
                .get()
                .asString()
                .contains("names of the person and words that everybody tries do not count");
    }

    /** [2.1.8] */
    @ParameterizedTest
    @CsvSource({
        "short, TOO_SHORT, false",
        "Summer-2026-Summer, EASY, false",
        "rainrainrainrain, EASY, false",
        "jennifer garcia, NEARLY, false",
        "another long password, HARD, true",
        "eight cold kitchens hum, VERY_HARD, true"
    })
    void a_password_is_taken_from_hard_on(String password, Strength strength, boolean taken) {
        var judged = Passwords.judge(password, NOBODY);

        assertThat(judged.strength()).isEqualTo(strength);
        assertThat(judged.against().isEmpty()).isEqualTo(taken);
    }

    @Test
    void a_password_over_the_limit_is_too_long_and_is_not_looked_at() {
        assertThat(Passwords.judge("ä".repeat(37), NOBODY).strength()).isEqualTo(Strength.TOO_LONG);
        assertThat(Passwords.judge("cold rain ".repeat(100_000), NOBODY).strength())
                .isEqualTo(Strength.TOO_LONG);
    }

    /** To look at all takes up to a second. */
    @Test
    void what_stands_behind_the_first_letters_is_not_looked_at() {
        String repeated = "ab".repeat(Guessing.LOOKED_AT / 2);
        String hard = "xK7#pVt9!qLm0Zr";

        assertThat(Passwords.judge(repeated + hard, NOBODY).strength()).isEqualTo(Strength.EASY);
        assertThat(Passwords.judge(hard + repeated, NOBODY).strength()).isEqualTo(Strength.VERY_HARD);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ines", "olaf", "mara", "teo", "wyn", "sol", "pia", "kit"})
    void the_passwords_of_the_sample_are_taken(String signInName) {
        assertThat(Passwords.against(DemoPassword.of(signInName), NOBODY)).isEmpty();
    }
}
