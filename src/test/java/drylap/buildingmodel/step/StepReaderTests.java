package drylap.buildingmodel.step;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.buildingmodel.step.StepValue.Derived;
import drylap.buildingmodel.step.StepValue.Many;
import drylap.buildingmodel.step.StepValue.Number;
import drylap.buildingmodel.step.StepValue.Reference;
import drylap.buildingmodel.step.StepValue.Text;
import drylap.buildingmodel.step.StepValue.Typed;
import drylap.buildingmodel.step.StepValue.Unset;
import drylap.buildingmodel.step.StepValue.Word;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The escapes and their examples are those of ISO 10303-21, 6.4.3, from memory: no text of the standard was at hand. */
class StepReaderTests {
    private static final StepLimits SMALL = new StepLimits(10_000, 5, 4, 40, 12, 3);

    static String file(String data) {
        return "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION(('a;b'),'2;1');\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n"
                + data + "\nENDSEC;\nEND-ISO-10303-21;\n";
    }

    static List<StepEntity> entities(String file, Charset charset, StepLimits limits) throws StepFault {
        List<StepEntity> all = new ArrayList<>();
        try {
            StepReader.read(
                    new ByteArrayInputStream(file.getBytes(charset)), limits, type -> !type.equals("SKIP"), all::add);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return all;
    }

    private static List<StepEntity> entities(String data) throws StepFault {
        return entities(file(data), StandardCharsets.ISO_8859_1, StepLimits.STANDARD);
    }

    private static String fault(String file, StepLimits limits) {
        try {
            entities(file, StandardCharsets.ISO_8859_1, limits);
            return "read";
        } catch (StepFault fault) {
            return fault.where() + ": " + fault.wrong();
        }
    }

    private static String text(String raw) throws StepFault {
        return entities("#1=A('" + raw + "');").getFirst().text(0).orElse("");
    }

    @Test
    void every_kind_of_value_is_read() throws StepFault {
        var entity = entities(
                        "#12 = Door /* it's; a comment */ ('it''s', 12, -1.5E1 ,#7,.T., $,*,(1.,(2.)),IFCLABEL('x'),\"0AF\",());")
                .getFirst();
        assertThat(entity.id()).isEqualTo(12);
        assertThat(entity.type()).isEqualTo("DOOR");
        assertThat(entity.values())
                .containsExactly(
                        new Text("it's"),
                        new Number(12),
                        new Number(-15),
                        new Reference(7),
                        new Word("T"),
                        new Unset(),
                        new Derived(),
                        new Many(List.of(new Number(1), new Many(List.of(new Number(2))))),
                        new Typed("IFCLABEL", List.of(new Text("x"))),
                        new Unset(),
                        new Many(List.of()));
    }

    @Test
    void what_is_not_wanted_is_passed_over_whole() throws StepFault {
        assertThat(entities("#1=SKIP('a;b''#2=A();',((((1)))));\n#3=(A(1)B(2));\n/* #4=A(); */ #5=A();"
                        .replace("#3=(A(1)B(2));", "")))
                .extracting(StepEntity::id)
                .containsExactly(5);
        List<StepEntity> all = new ArrayList<>();
        try {
            StepReader.read(
                    new ByteArrayInputStream(file("#3=(A(1)B('x;'));#4=A();").getBytes(StandardCharsets.UTF_8)),
                    StepLimits.STANDARD,
                    "A"::equals,
                    all::add);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        assertThat(all).extracting(StepEntity::id).containsExactly(4);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "H\\X\\E9tel | H\u00e9tel",
                "\\X2\\00C400D6\\X0\\x | \u00c4\u00d6x",
                "\\X4\\0001F3E0\\X0\\ | \uD83C\uDFE0",
                "C\\S\\Hateau | C\u00c8ateau",
                "\\PE\\\\S\\P | \u0430",
                "a\\\\b | a\\b",
                "C:\\temp | C:\\temp",
                "\\X2\\00C | \\X2\\00C",
                "\\X2\\D800\\X0\\ | \uFFFD"
            })
    void escapes_are_resolved_and_what_is_none_stays(String raw, String said) throws StepFault {
        assertThat(text(raw)).isEqualTo(said);
    }

    @Test
    void bytes_beyond_ascii_are_utf_8_or_else_latin() throws StepFault {
        String file = file("#1=A('H\u00e9tel');");
        assertThat(entities(file, StandardCharsets.UTF_8, SMALL).getFirst().text(0))
                .contains("H\u00e9tel");
        assertThat(entities(file, StandardCharsets.ISO_8859_1, SMALL).getFirst().text(0))
                .contains("H\u00e9tel");
    }

    @Test
    void faults_name_the_line_and_the_entity() {
        assertThat(fault(file("#1=A(1);\n#2=A(1,);"), SMALL))
                .isEqualTo("line 8, entity #2: has \")\" where a word belongs");
        assertThat(fault(file("#1=A('open);"), StepLimits.STANDARD))
                .isEqualTo("line 10, entity #1: ends within a text");
        assertThat(fault(file("#1=A(1.2.3);"), SMALL)).isEqualTo("line 7, entity #1: has 1.2.3, which is no number");
        assertThat(fault(file("#1=A(1.E999);"), SMALL)).contains("1.E999, which is beyond all numbers");
        assertThat(fault(file("#0=A();"), SMALL)).contains("has #0, which is no entity");
        assertThat(fault(file("#4294967297=A();"), SMALL)).contains("has #4294967297, which is no entity");
        assertThat(fault("ISO-10303-21;\nHEADER;\nENDSEC;\n", SMALL)).contains("where a word belongs");
        assertThat(fault("PK", SMALL)).isEqualTo("line 1: does not begin with ISO-10303-21");
    }

    @Test
    void what_is_too_much_is_refused() {
        assertThat(fault(file("#1=A(((((1)))));"), SMALL)).contains("lists within lists too deep");
        assertThat(fault(file("#1=A('" + "x".repeat(41) + "');"), SMALL)).contains("too long");
        assertThat(fault(file("#1=A(" + "1,".repeat(12) + "1);"), SMALL)).contains("too many values");
        assertThat(fault(file("#1=SKIP();\n".repeat(6)), SMALL)).contains("one entity too many");
        assertThat(fault(file("/*" + "x".repeat(10_000) + "*/"), SMALL)).contains("is too large");
    }

    @Test
    void a_file_begins_as_one_whatever_it_is_called() {
        assertThat(StepReader.begins("\uFEFF \n ISO-10303-21;".getBytes(StandardCharsets.UTF_8)))
                .isTrue();
        assertThat(StepReader.begins("Mark,ISO-10303-21".getBytes(StandardCharsets.UTF_8)))
                .isFalse();
        assertThat(StepReader.begins(new byte[0])).isFalse();
    }
}
