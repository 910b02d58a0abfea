package drylap.windowschedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Lengths are written out and read back; the oracle is a fraction of whole numbers, 254/10 mm an inch, never a decimal. */
class LengthsPropertyTests {
    private static final BigInteger TENTHS_OF_AN_INCH = BigInteger.valueOf(254);

    @Property(tries = 500)
    void feet_inches_and_64ths_read_back_exactly(
            @ForAll @IntRange(max = 60) int feet,
            @ForAll @IntRange(max = 11) int inches,
            @ForAll @IntRange(max = 63) int sixtyFourths,
            @ForAll @Size(3) List<Boolean> ways) {
        String text = "%d%s%d%s%s"
                .formatted(
                        feet,
                        ways.get(0) ? "'-" : " ft ",
                        inches,
                        sixtyFourths == 0 ? "" : (ways.get(1) ? " " : "-") + lowest(sixtyFourths),
                        ways.get(2) ? "\"" : " in");
        // feet * 12 + inches + n/64 inches, times 254/10 mm, over a common denominator of 640
        BigInteger numerator =
                BigInteger.valueOf((feet * 12L + inches) * 64 + sixtyFourths).multiply(TENTHS_OF_AN_INCH);

        assertThat(Lengths.read(text, null)).as(text).isInstanceOf(LengthReading.Read.class);
        BigDecimal read = ((LengthReading.Read) Lengths.read(text, null)).millimetres();
        assertThat(read.multiply(BigDecimal.valueOf(640)).toBigIntegerExact())
                .as(text)
                .isEqualTo(numerator);
    }

    @Property(tries = 300)
    void bare_numbers_with_fractions_are_so_many_of_their_unit(
            @ForAll @IntRange(min = 1, max = 999) int whole, @ForAll @IntRange(min = 1, max = 15) int sixteenths) {
        var read = (LengthReading.Read) Lengths.read("%d %d/16".formatted(whole, sixteenths), LengthUnit.INCH);
        assertThat(read.millimetres().multiply(BigDecimal.valueOf(160)).toBigIntegerExact())
                .isEqualTo(BigInteger.valueOf(whole * 16L + sixteenths).multiply(TENTHS_OF_AN_INCH));
    }

    /** No text whatever throws. */
    @Property(tries = 500)
    void any_text_has_an_answer(@ForAll String text) {
        assertThat(Lengths.read(text, LengthUnit.INCH)).isNotNull();
        assertThat(Lengths.pair(text))
                .satisfiesAnyOf(
                        pair -> assertThat(pair).isEmpty(),
                        pair -> assertThat(pair).hasSize(2));
    }

    private static String lowest(int sixtyFourths) {
        int common =
                BigInteger.valueOf(sixtyFourths).gcd(BigInteger.valueOf(64)).intValue();
        return sixtyFourths / common + "/" + 64 / common;
    }
}
