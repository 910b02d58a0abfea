package drylap.windowschedule;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.buildingmodel.ModelSaid;
import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.Speech;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScheduleSaidTests {
    /** Of what is no sentence of the list. */
    private static final String AS_IT_IS = "{0}";

    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));

    @ParameterizedTest
    @EnumSource(ScheduleSaid.class)
    void what_is_said_of_a_schedule_is_read_back_and_said_in_another_language(ScheduleSaid one) {
        readsBack(one.with("7", "8", "9"), one.with("{0}", "{1}", "{2}"));
    }

    @ParameterizedTest
    @EnumSource(ModelSaid.class)
    void what_is_said_of_a_model_is_read_back_and_said_in_another_language(ModelSaid one) {
        readsBack(one.with("7", "8", "9"), one.with("{0}", "{1}", "{2}"));
    }

    private static void readsBack(String written, String sentence) {
        var read = ScheduleSaid.read(written);
        assertThat(read.words()).isEqualTo(written);
        assertThat(read.english()).isEqualTo(sentence);
        if (sentence.matches(".*[a-z]{2}.*")) assertThat(SPANISH.it(read)).isNotEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Annex, faces 172.5°, plane 1 of 2 from outside | Annex, mira a 172.5°, plano 1 de 2 desde afuera",
                "its overall width; which way it faces: its wall does not stand upright | su ancho total; hacia dónde mira: su muro no está vertical",
                "sheet Windows, row 20001 | hoja Windows, fila 20001",
                "North elevation | North elevation"
            })
    void parts_are_said_too_and_what_a_schedule_writes_stays(String written, String spanish) {
        assertThat(SPANISH.it(ScheduleSaid.read(written))).isEqualTo(spanish);
    }

    @Test
    void a_cell_of_nothing_but_parts_is_read_as_far_as_anyone_would_write_it() {
        String deep = "faces 1°, ".repeat(2000) + "frame";
        assertThat(ScheduleSaid.read(deep).words()).isEqualTo(deep);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "PK\u0003\u0004\u0000",
                "a\u0000b",
                "Mark,\"Width\nA,1",
                "ISO-10303-21;",
                "ISO-10303-21; HEADER; FILE_SCHEMA(('IFC9')); ENDSEC; DATA; ENDSEC; END-ISO-10303-21;",
                "ISO-10303-21; HEADER; FILE_SCHEMA(('IFC4')); ENDSEC; DATA; #1=IFCPROJECT(1e999); ENDSEC; END-ISO-10303-21;",
                "ISO-10303-21; HEADER; FILE_SCHEMA(('IFC4')); ENDSEC; DATA; ENDSEC; END-ISO-10303-21;"
            })
    void why_a_file_is_refused_is_a_sentence_of_the_list(String file) {
        var refused = (FileReading.Refused) ScheduleFiles.read("6.csv", file.getBytes(UTF_8));
        areSentences(Stream.of(refused.where(), refused.wrong(), refused.accepted())
                .filter(text -> !text.equals("ISO 10303-21")));
    }

    @Test
    void whatever_is_wrong_with_a_row_is_a_sentence_of_the_list() {
        var draft =
                SiteWithWalls.draft("Mark,Qty,RO W,RO H,Frame size (mm),Floor,Elevation,Material,Method,Sill height\n"
                        + "A,1,900,1500,,1,North,vinyl,A1,\n"
                        + ",x,1/3 mm,\"1,500\",900x900,0,Up,glass,A,\n"
                        + "B,900,3'-13\",9 ells,,soon,North,vinyl,Q,\n"
                        + "C,1,,,wide,1,North,vinyl,B1,99 m\n"
                        + "D,1,,,,,,,,\n");
        var outcome = Outcomes.of(draft, SiteWithWalls.folder(), Set.of());
        assertThat(outcome.faults()).hasSizeGreaterThan(10);
        areSentences(outcome.faults().stream().flatMap(fault -> Stream.of(fault.wrong(), fault.accepted())));
        areSentences(outcome.lacking().stream());
    }

    private static void areSentences(Stream<String> texts) {
        List<String> all = texts.filter(text -> text.contains(" ")).toList();
        assertThat(all).extracting(text -> ScheduleSaid.read(text).english()).doesNotContain(AS_IT_IS);
    }
}
