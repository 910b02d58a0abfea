package drylap.windowschedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.sites.Opening;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * A schedule of 600 rows that LibreOffice Calc wrote ({@code src/build/WindowScheduleFiles.java}): merged titles over two rows, fractions,
 * formulas, blank rows, and 14 rows with one fault each. What is expected is worked out here in whole 64ths of an inch.
 */
class SixHundredRowsTests {
    private static final int[] SIXTY_FOURTHS = {0, 32, 16, 24, 32, 20, 7, 26};
    private static final List<Integer> FAULTY =
            List.of(7, 48, 91, 133, 177, 219, 261, 303, 345, 387, 429, 471, 514, 555);

    private final Draft draft = SiteWithWalls.draft("six-hundred.xlsx", SiteWithWalls.sixHundred());

    @Test
    void merged_titles_over_two_rows_name_every_column() {
        assertThat(draft.header().first()).isEqualTo(1);
        assertThat(draft.header().depth()).isEqualTo(2);
        assertThat(draft.columns())
                .containsExactlyInAnyOrderEntriesOf(Map.ofEntries(
                        Map.entry(Field.MARK, 0),
                        Map.entry(Field.QUANTITY, 1),
                        Map.entry(Field.FRAME_WIDTH, 2),
                        Map.entry(Field.FRAME_HEIGHT, 3),
                        Map.entry(Field.ROUGH_WIDTH, 4),
                        Map.entry(Field.ROUGH_HEIGHT, 5),
                        Map.entry(Field.SILL_HEIGHT, 6),
                        Map.entry(Field.LEVEL, 7),
                        Map.entry(Field.ELEVATION, 8),
                        Map.entry(Field.MATERIAL, 9),
                        Map.entry(Field.METHOD, 10),
                        Map.entry(Field.HEAD_DETAIL, 11),
                        Map.entry(Field.JAMB_DETAIL, 12),
                        Map.entry(Field.SILL_DETAIL, 13),
                        Map.entry(Field.REMARKS, 14)));
        assertThat(draft.header().unit(4)).contains(LengthUnit.INCH);
        assertThat(draft.header().unit(6)).contains(LengthUnit.MILLIMETRE);
    }

    @Test
    void each_of_the_fourteen_faults_is_named_at_its_cell() {
        assertThat(outcome(draft).faults())
                .extracting(CellFault::row, CellFault::column, CellFault::wrong)
                .containsExactly(
                        tuple(row(7), "A", "is blank"),
                        tuple(row(48), "B", "is not a whole number"),
                        tuple(row(91), "B", "is too small"),
                        tuple(row(133), "C", "is not a length"),
                        tuple(row(177), "C", "has 12 inches or more beside its feet"),
                        tuple(row(219), "C", "has a fraction that is none of halves to 64ths below one"),
                        tuple(row(261), "F", "is blank"),
                        tuple(row(303), "H", "is not a whole number"),
                        tuple(row(345), "H", "is too small"),
                        tuple(row(387), "I", "is no facade of the site"),
                        tuple(row(429), "J", "is no known material"),
                        tuple(row(471), "K", "is unknown"),
                        tuple(row(514), "E", "is smaller than the frame"),
                        tuple(row(555), "C", "has a comma that may part thousands or decimals"));
        assertThat(outcome(draft).sound()).isFalse();
    }

    @Test
    void every_other_row_becomes_its_openings_with_sizes_to_the_millimetre() {
        Draft rest = draft;
        for (int faulty : FAULTY) rest = rest.leavingOut(row(faulty), true);
        Outcome outcome = outcome(rest);
        assertThat(outcome.sound()).isTrue();
        Map<Integer, List<Opening>> byRow = outcome.rows().stream()
                .collect(Collectors.toMap(
                        RowOutcome::number,
                        one -> one.openings().stream()
                                .map(OpeningOutcome::becomes)
                                .toList()));
        for (int i = 1; i <= 600; i++) {
            List<Opening> openings = byRow.getOrDefault(row(i), List.of());
            assertThat(openings).as("row %d", i).hasSize(FAULTY.contains(i) ? 0 : i % 50 == 0 ? 3 : 1);
            for (Opening opening : openings) check(i, opening);
        }
        assertThat(byRow.get(row(50)))
                .extracting(one -> one.id().value())
                .containsExactly("W-050-1", "W-050-2", "W-050-3");
    }

    private static void check(int i, Opening opening) {
        boolean even = i % 2 == 0;
        long width = even
                ? 64L * (24 + 12 * (i % 4) + i % 12 + 1) + 4L * (1 + i % 15)
                : 64L * (12 * (2 + i % 4) + i % 12) + SIXTY_FOURTHS[i % 8] + 32;
        long height = even
                ? 64L * (36 + 12 * (i % 3) + i % 11 + 1) + 4L * (1 + i % 15)
                : 64L * (12 * (3 + i % 3) + i % 11) + SIXTY_FOURTHS[(i + 3) % 8] + 32;
        assertThat(opening.widthMm()).as("width of row %d", i).isEqualTo(millimetres(width));
        assertThat(opening.heightMm()).as("height of row %d", i).isEqualTo(millimetres(height));
        assertThat(opening.level()).isEqualTo(1 + i % 6);
        assertThat(opening.facade().facade())
                .isEqualTo(List.of("north", "east", "south", "west").get(i % 4));
        assertThat(opening.frame())
                .isEqualTo(List.of(Frame.VINYL, Frame.ALUMINUM, Frame.WOOD, Frame.FIBERGLASS)
                        .get(i % 4));
        assertThat(opening.method()).isEqualTo(i % 2 == 0 ? Method.A1 : Method.B1);
    }

    /** 254/640 mm a 64th of an inch, halves up; the half inch of clearance is 32 of them. */
    private static int millimetres(long sixtyFourths) {
        BigInteger twice = BigInteger.valueOf(sixtyFourths).multiply(BigInteger.valueOf(254 * 2));
        return twice.add(BigInteger.valueOf(640))
                .divide(BigInteger.valueOf(640 * 2))
                .intValueExact();
    }

    /** Four rows of titles, and a blank row after each 200. */
    private static int row(int i) {
        return 4 + i + (i - 1) / 200;
    }

    private static Outcome outcome(Draft draft) {
        return Outcomes.of(draft, SiteWithWalls.folder(), Set.of());
    }
}
