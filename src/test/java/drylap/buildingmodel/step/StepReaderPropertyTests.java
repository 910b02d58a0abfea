package drylap.buildingmodel.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The oracle is a writer of its own, which shares nothing with the reader. */
class StepReaderPropertyTests {
    /** Writes values as the standard has them, with blanks and comments between. */
    private static String written(StepValue value, String gap) {
        return gap
                + switch (value) {
                    case StepValue.Text(var text) -> "'" + escaped(text) + "'";
                    case StepValue.Number(double number) -> String.format(Locale.ROOT, "%.12E", number);
                    case StepValue.Reference(int entity) -> "#" + entity;
                    case StepValue.Word(var word) -> "." + word + ".";
                    case StepValue.Typed(var type, var values) -> type + list(values, gap);
                    case StepValue.Many(var values) -> list(values, gap);
                    case StepValue.Unset _ -> "$";
                    case StepValue.Derived _ -> "*";
                }
                + gap;
    }

    private static String list(List<StepValue> values, String gap) {
        return values.stream().map(one -> written(one, gap)).collect(Collectors.joining(",", "(", ")"));
    }

    /** All but plain ASCII goes out by its code units. */
    private static String escaped(String text) {
        var out = new StringBuilder();
        for (char one : text.toCharArray()) {
            if (one == '\'') out.append("''");
            else if (one == '\\') out.append("\\\\");
            else if (one >= ' ' && one < 127) out.append(one);
            else out.append("\\X2\\%04X\\X0\\".formatted((int) one));
        }
        return out.toString();
    }

    @Provide
    Arbitrary<StepValue> values() {
        // code points of one code unit: the writer above writes unit by unit
        Arbitrary<StepValue> text = Arbitraries.strings()
                .withCharRange((char) 0x20, (char) 0xD7FF)
                .ofMaxLength(12)
                .map(StepValue.Text::new);
        Arbitrary<StepValue> number = Arbitraries.integers()
                .between(-1_000_000, 1_000_000)
                .map(thousandths -> new StepValue.Number(thousandths / 1000.0));
        Arbitrary<StepValue> reference =
                Arbitraries.integers().between(1, Integer.MAX_VALUE).map(StepValue.Reference::new);
        Arbitrary<StepValue> word = Arbitraries.of("T", "F", "MILLI", "A_1").map(StepValue.Word::new);
        Arbitrary<StepValue> mark = Arbitraries.of(new StepValue.Unset(), new StepValue.Derived());
        return Arbitraries.lazyOf(
                () -> text, () -> number, () -> reference, () -> word, () -> mark, this::typed, this::lists);
    }

    private Arbitrary<StepValue> typed() {
        return values().list().ofSize(1).map(one -> new StepValue.Typed("IFCLABEL", one));
    }

    private Arbitrary<StepValue> lists() {
        return values().list().ofMaxSize(3).map(StepValue.Many::new);
    }

    @Provide
    Arbitrary<String> gaps() {
        return Arbitraries.of("", " ", "\r\n", "/* it's; ( */", "\t/**/ ");
    }

    @Property(tries = 300)
    void what_is_written_is_read_back(
            @ForAll("values") StepValue one, @ForAll("values") StepValue other, @ForAll("gaps") String gap)
            throws StepFault {
        List<StepValue> values = List.of(one, other);
        String file = StepReaderTests.file("#7=DOOR" + list(values, gap) + ";");
        List<StepEntity> read = StepReaderTests.entities(file, StandardCharsets.US_ASCII, StepLimits.STANDARD);
        assertThat(read).containsExactly(new StepEntity(7, "DOOR", values));
    }

    @Property(tries = 300)
    void passing_an_entity_over_ends_where_reading_it_ends(@ForAll("values") StepValue one, @ForAll("gaps") String gap)
            throws StepFault {
        String file = StepReaderTests.file("#7=SKIP" + list(List.of(one), gap) + ";#8=DOOR();");
        assertThat(StepReaderTests.entities(file, StandardCharsets.US_ASCII, StepLimits.STANDARD))
                .extracting(StepEntity::id)
                .containsExactly(8);
    }

    @Property(tries = 300)
    void a_file_that_is_cut_off_is_refused_with_a_reason(@ForAll("values") StepValue one, @ForAll int where)
            throws IOException {
        String file = StepReaderTests.file("#7=DOOR" + list(List.of(one), " ") + ";");
        // the last semicolon and the line end behind it may be cut to no harm
        int length = Math.floorMod(where, file.length() - 2);
        byte[] cut = file.substring(0, length).getBytes(StandardCharsets.US_ASCII);
        String fault = "";
        try {
            StepReader.read(new ByteArrayInputStream(cut), StepLimits.STANDARD, _ -> true, _ -> {});
        } catch (StepFault refused) {
            fault = refused.wrong();
        }
        assertThat(fault).isNotBlank();
    }
}
