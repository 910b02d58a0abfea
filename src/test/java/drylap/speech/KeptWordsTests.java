package drylap.speech;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class KeptWordsTests {
    private final KeptWords words =
            new KeptWords(Stream.of("{0}: {1} – {2} is accepted", "{0} is out of order", "the file", "at {0}"));

    @Test
    void a_text_is_read_back_into_its_sentence_and_sentences_within_it() {
        assertThat(words.read("the file: holds \"warm\" – a number is accepted"))
                .isEqualTo(new Saying(
                        "{0}: {1} – {2} is accepted",
                        List.of(new Saying("the file", List.of()), "holds \"warm\"", "a number")));
    }

    @Test
    void other_words_stay_as_they_are() {
        assertThat(words.read("seven").words()).isEqualTo("seven");
    }

    /** What somebody puts into a file may be quoted, and may be made up of separators. */
    @Test
    void a_long_text_is_looked_into_for_one_place_only() {
        String much = "x".repeat(KeptWords.LONGEST_OF_SEVERAL);
        String several = "the file: %s – a number is accepted".formatted(much);
        assertThat(words.read(several)).isEqualTo(Saying.asItIs(several));
        assertThat(words.read("at " + much)).isEqualTo(new Saying("at {0}", List.of(much)));
    }
}
