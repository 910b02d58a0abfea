package drylap.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WishTests {
    @Test
    void rounds_or_minutes_say_how_long_and_all_faults_are_meant_unless_some_are_named() {
        assertThat(Wish.of("--rounds", "3"))
                .returns(3, Wish::rounds)
                .satisfies(wish -> assertThat(wish.faults()).containsExactly(Fault.values()));
        assertThat(Wish.of("--minutes", "20", "--fault", "database-killed", "--postgres", "synchronous_commit=off"))
                .returns(Duration.ofMinutes(20), Wish::time)
                .returns(java.util.List.of(Fault.DATABASE_KILLED), Wish::faults)
                .returns(java.util.List.of("synchronous_commit=off"), Wish::postgres);
    }

    @ParameterizedTest
    @CsvSource({
        "--rounds 0, 1 to 1439",
        "--minutes x, 1 to 1439",
        "--rounds 1 --fault fire, database-killed",
        "--fault wire-cut, how long is not said",
        "--postgres a;b, SETTING=VALUE",
        "--hours 3, --hours is not known"
    })
    void what_cannot_be_is_refused_with_what_can(String words, String said) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wish.of(words.split(" ")))
                .withMessageContaining(said);
    }
}
