package drylap.ui.drawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.ui.drawn.OddsTable.Cell;
import java.util.List;
import org.junit.jupiter.api.Test;

class OddsTableTests {
    /** Quoting by RFC 4180, section 2: rules 1, 5, 6 and 7. */
    @Test
    void a_file_holds_the_cells_of_the_page_in_the_order_of_its_heads() {
        var table = new OddsTable(
                "odds.csv",
                "Odds",
                List.of("Facade", "Day", "Chance, of 100"),
                List.of(List.of(
                        Cell.of("Quay \"Nine\", west"), new Cell("Thu 16 Apr", "2026-04-16"), Cell.of("71.0"))));

        assertThat(table.csv())
                .isEqualTo("Facade,Day,\"Chance, of 100\"\r\n\"Quay \"\"Nine\"\", west\",2026-04-16,71.0\r\n");
    }

    @Test
    void a_row_that_does_not_fit_its_heads_is_refused() {
        assertThatThrownBy(
                        () -> new OddsTable("odds.csv", "Odds", List.of("One", "Two"), List.of(List.of(Cell.of("1")))))
                .hasMessageContaining("a row of 1 cells under 2 heads");
    }
}
