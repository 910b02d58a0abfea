package drylap.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;

class ExternalDatabaseTests {
    @Test
    void an_address_that_is_none_is_refused_with_the_form_that_is_accepted() {
        assertThatExceptionOfType(DatabaseTrouble.class)
                .isThrownBy(() -> new ExternalDatabase("postgres://db.example/drylap", "me", "secret"))
                .withMessageContaining("DRYLAP_DB_URL")
                .satisfies(trouble -> assertThat(trouble.remedy()).contains("jdbc:postgresql://HOST:PORT/DATABASE"));
    }

    @Test
    void a_database_that_does_not_answer_is_named_without_the_password() {
        assertThatExceptionOfType(DatabaseTrouble.class)
                .isThrownBy(() -> new ExternalDatabase("jdbc:postgresql://127.0.0.1:1/none", "me", "secret").reached())
                .withMessageContaining("cannot be reached")
                .satisfies(trouble ->
                        assertThat(trouble.getMessage() + trouble.remedy()).doesNotContain("secret"));
    }
}
