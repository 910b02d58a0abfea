package drylap.calendars;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** RFC 5545, 3.1: at most 75 octets a line without its end, and a fold is CR LF and one space. */
class FoldingTests {
    @Test
    void a_line_of_75_octets_stays_and_one_of_76_is_folded() {
        assertThat(Folding.fold("a".repeat(75) + "\r\n")).isEqualTo("a".repeat(75) + "\r\n");
        assertThat(Folding.fold("a".repeat(76) + "\r\n")).isEqualTo("a".repeat(75) + "\r\n a\r\n");
    }

    @Test
    void octets_count_not_characters_and_none_is_torn() {
        String line = "é北😀".repeat(40);

        String folded = Folding.fold(line + "\r\n");

        assertThat(folded.split("\r\n")).allSatisfy(one -> {
            assertThat(one.getBytes(StandardCharsets.UTF_8)).hasSizeBetween(1, 75);
            assertThat(one).doesNotContain("\uFFFD");
        });
        assertThat(folded.replace("\r\n ", "")).isEqualTo(line + "\r\n");
    }
}
