package drylap.windowschedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values worked out by hand from 1 in = 25.4 mm and 1 ft = 304.8 mm exactly (NIST SP 811, appendix B). */
class LengthsTests {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            3'-0 1/2"      | 927.1
            3'-0"          | 914.4
            3'             | 914.4
            3.5'           | 1066.8
            3' 6           | 1066.8
            3'6"           | 1066.8
            3 ft 6 in      | 1066.8
            3 ft. 6 in.    | 1066.8
            2′–11 7⁄8″     | 911.225
            3’-0½”         | 927.1
            36½"           | 927.1
            36 1/2"        | 927.1
            36-1/2"        | 927.1
            36 1/2 in      | 927.1
            36 1/2 pulg    | 927.1
            36 1/2 pulg.   | 927.1
            36 1/2 Pulgadas | 927.1
            1 pulgada      | 25.4
            3 pies 6 pulgadas | 1066.8
            3 pies y 6 1/2 pulgadas | 1079.5
            3 pies 6 pulg. | 1066.8
            3 pies-6 pulg  | 1066.8
            1 pie          | 304.8
            3.5 pies       | 1066.8
            3,5 pies       | 1066.8
            900 milímetros | 900
            1,5 metros     | 1500
            42.5"          | 1079.5
            42.5 inches    | 1079.5
            42''           | 1066.8
            7/64"          | 2.778125
            ¾"             | 19.05
            1067 mm        | 1067
            106.7cm        | 1067
            1.067 m        | 1067
            1,5 m          | 1500
            """)
    void a_length_with_its_unit_is_read_whatever_the_column_says(String text, BigDecimal millimetres) {
        for (LengthUnit unit : LengthUnit.values())
            assertThat(read(text, unit)).as("%s in a column of %s", text, unit).isEqualByComparingTo(millimetres);
        assertThat(read(text, null)).isEqualByComparingTo(millimetres);
    }

    @ParameterizedTest
    @CsvSource({
        "36,INCH,914.4",
        "36 1/2,INCH,927.1",
        "3.5,FOOT,1066.8",
        "900,MILLIMETRE,900",
        "90.5,CENTIMETRE,905",
        "0.9,METRE,900"
    })
    void a_bare_number_has_the_unit_of_its_column(String text, LengthUnit unit, BigDecimal millimetres) {
        assertThat(read(text, unit)).isEqualByComparingTo(millimetres);
    }

    @ParameterizedTest
    @CsvSource({"36", "36 1/2", "½", "900", "0.9"})
    void a_bare_number_in_a_column_without_a_unit_is_no_length(String text) {
        assertThat(Lengths.read(text, null)).isInstanceOf(LengthReading.NoUnit.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            1,200 mm   | has a comma that may part thousands or decimals
            3'-14"     | has 12 inches or more beside its feet
            36 1/3"    | has a fraction that is none of halves to 64ths below one
            36 5/4"    | has a fraction that is none of halves to 64ths below one
            36.5 1/2"  | has a fraction that is none of halves to 64ths below one
            90 1/2 cm  | has a fraction of a metric unit
            36 furlong | has an unknown unit
            36 pulgares | has an unknown unit
            3 pies 14 pulgadas | has 12 inches or more beside its feet
            wide       | is not a length
            -36"       | is not a length
            3-0        | is not a length
            #REF!      | is not a length
            """)
    void anything_else_is_refused_with_the_reason(String text, String wrong) {
        assertThat(Lengths.read(text, LengthUnit.INCH))
                .isInstanceOfAny(LengthReading.Wrong.class)
                .extracting(reading -> ((LengthReading.Wrong) reading).wrong())
                .isEqualTo(wrong);
    }

    @Test
    void a_cell_of_both_sides_is_split_and_a_unit_at_its_end_stands_for_both() {
        assertThat(Lengths.pair("3'-0\" x 4'-6\"")).containsExactly("3'-0\"", "4'-6\"");
        assertThat(Lengths.pair("900 × 1500 mm")).containsExactly("900 mm", "1500 mm");
        assertThat(Lengths.pair("36 X 48\"")).containsExactly("36 \"", "48\"");
        assertThat(Lengths.pair("48\" H x 36\" W")).containsExactly("36\"", "48\"");
        assertThat(Lengths.pair("3' by 4'")).containsExactly("3'", "4'");
        assertThat(Lengths.pair("36")).isEmpty();
        assertThat(Lengths.pair("36 x")).isEmpty();
        assertThat(Lengths.pair("3 x 4 x 5")).isEmpty();
    }

    private static BigDecimal read(String text, @Nullable LengthUnit unit) {
        return Lengths.read(text, unit) instanceof LengthReading.Read(BigDecimal millimetres)
                ? millimetres
                : new BigDecimal(-1);
    }
}
