package drylap.sites;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.speech.Saying;
import java.util.List;
import org.junit.jupiter.api.Test;

class StreetAddressTests {
    @Test
    void lines_are_parted_by_line_breaks_or_semicolons_and_blank_ones_go() {
        assertThat(StreetAddress.read(" 1 Invented  Quay,\tgate 2 ;\r\n\n ZZ 00001\n")
                        .lines())
                .containsExactly("1 Invented Quay, gate 2", "ZZ 00001");
        assertThat(StreetAddress.read(" ; \n")).isEqualTo(StreetAddress.NONE);
        assertThat(StreetAddress.NONE.known()).isFalse();
    }

    @Test
    void what_was_read_is_read_again_from_either_way_of_writing_it() {
        var address = StreetAddress.read("č. 5, Žižkov\n130 00 Praha-Vymyšlená\nNikde");

        assertThat(StreetAddress.read(address.below())).isEqualTo(address);
        assertThat(StreetAddress.read(String.join("; ", address.lines()))).isEqualTo(address);
        assertThat(address.inOneLine()).isEqualTo("č. 5, Žižkov, 130 00 Praha-Vymyšlená, Nikde");
    }

    @Test
    void six_lines_of_eighty_characters_are_the_most() {
        String line = "x".repeat(80);
        String most = String.join("\n", List.of(line, line, line, line, line, line));
        assertThat(StreetAddress.fault(most)).isEmpty();
        // with the breaks between no more than the column of the database takes
        assertThat(most).hasSizeLessThanOrEqualTo(500);

        assertThat(StreetAddress.fault(most + "\ny").map(Saying::words)).contains("has 7 lines");
        assertThat(StreetAddress.fault("a\n" + line + "x").map(Saying::words)).contains("has 81 characters in line 2");
        assertThat(StreetAddress.fault("a\n\u0007b").map(Saying::words))
                .contains("holds a control character in line 2");
    }

    @Test
    void an_address_that_would_be_read_otherwise_than_written_cannot_be() {
        for (String line : List.of("a;b", "a\nb", " a", "", "a\u0000"))
            assertThatThrownBy(() -> new StreetAddress(List.of(line)))
                    .as(line)
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("accepted: an address of up to 6 lines of up to 80 characters");
    }
}
