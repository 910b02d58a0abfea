package drylap.windowschedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HeaderTests {
    private static Sheet sheet(String... lines) {
        return new Sheet(
                "sheet",
                IntStream.range(0, lines.length)
                        .mapToObj(i -> new Sheet.Row(
                                i + 1,
                                Arrays.stream(lines[i].split("\\|", -1))
                                        .map(String::strip)
                                        .toList()))
                        .toList());
    }

    private static Header header(String... lines) {
        return Header.find(sheet(lines)).orElseThrow();
    }

    @Test
    void titles_of_the_sheet_above_the_header_are_passed_over() {
        Header header =
                header("WINDOW SCHEDULE", "Block A, revision 3", "Tag | Count | R.O. W | R.O. H", "1 | 2 | 3' | 4'");
        assertThat(header.first()).isEqualTo(2);
        assertThat(header.columns())
                .isEqualTo(Map.of(Field.MARK, 0, Field.QUANTITY, 1, Field.ROUGH_WIDTH, 2, Field.ROUGH_HEIGHT, 3));
    }

    @Test
    void a_title_over_several_columns_is_read_for_those_that_it_makes_sense_of() {
        Header header = header(
                " | | Rough opening | | | Frame | | Details | | ",
                "Mark | Qty | Width (mm) | Height (mm) | Level | W | H | Head | Sill | Notes",
                "A | 1 | 900 | 1500 | 1 | | | 1/A5 | 2/A5 |");
        assertThat(header.columns())
                .isEqualTo(Map.of(
                        Field.MARK, 0,
                        Field.QUANTITY, 1,
                        Field.ROUGH_WIDTH, 2,
                        Field.ROUGH_HEIGHT, 3,
                        Field.LEVEL, 4,
                        Field.FRAME_WIDTH, 5,
                        Field.FRAME_HEIGHT, 6,
                        Field.HEAD_DETAIL, 7,
                        Field.SILL_DETAIL, 8,
                        Field.REMARKS, 9));
        assertThat(header.unit(2)).contains(LengthUnit.MILLIMETRE);
        assertThat(header.unit(5)).isEmpty();
    }

    @Test
    void the_surest_title_wins_and_a_head_height_is_no_height() {
        Header header = header(
                "Type | Mark | Head height | Sill height | Size (W x H) | Fa\u00e7ade | Frame material",
                "x | A | | | | |");
        assertThat(header.columns())
                .isEqualTo(Map.of(
                        Field.MARK, 1,
                        Field.SILL_HEIGHT, 3,
                        Field.FRAME_SIZE, 4,
                        Field.ELEVATION, 5,
                        Field.MATERIAL, 6));
    }

    @Test
    void units_stand_in_brackets_or_at_the_end() {
        Header header = header("Mark | Width (in.) | Height, mm | Sill height [cm] | X (m)", "A | | | |");
        assertThat(IntStream.range(1, 5)
                        .mapToObj(header::unit)
                        .map(unit -> unit.orElseThrow())
                        .toList())
                .isEqualTo(List.of(LengthUnit.INCH, LengthUnit.MILLIMETRE, LengthUnit.CENTIMETRE, LengthUnit.METRE));
    }

    @Test
    void a_sheet_without_titles_of_a_schedule_has_no_header() {
        assertThat(Header.find(sheet("a | b", "1 | 2"))).isEmpty();
    }
}
