package drylap.hooks;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.Speech;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TryWordsTests {
    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));

    @ParameterizedTest
    @EnumSource(TryWords.class)
    void what_came_of_a_try_is_read_back_and_said_in_another_language(TryWords one) {
        String kept = one.with("office.example", "10.0.0.1").words();
        var read = TryWords.read(kept);
        assertThat(read.words()).isEqualTo(kept);
        assertThat(read.english()).isEqualTo(one.with().english());
        assertThat(SPANISH.it(read)).isNotEqualTo(kept);
    }
}
