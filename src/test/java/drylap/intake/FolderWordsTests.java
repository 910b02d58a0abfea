package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Language;
import drylap.kernel.Reading;
import drylap.speech.Speech;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FolderWordsTests {
    /** Of what is no sentence of the list. */
    private static final String AS_IT_IS = "{0}";

    private static final Speech SPANISH = new Speech(Reading.USUAL.in(Language.SPANISH));

    @ParameterizedTest
    @EnumSource(FolderWords.class)
    void what_a_message_says_is_read_back_as_the_same_sentence_and_said_in_another_language(FolderWords one) {
        String message = one.with("7", "8", "9");
        var read = FolderWords.read(message);
        assertThat(read.words()).isEqualTo(message);
        assertThat(one.with("{0}", "{1}", "{2}")).isEqualTo(read.english());
        assertThat(SPANISH.it(read)).isNotEqualTo(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stands for an opening of line 2 already | ya designa una abertura de la línea 2",
                "refers to no crew | se refiere a algo que no existe (cuadrilla)",
                "a whole number of minutes from 0 to 10000 | un número entero de 0 a 10000 (minutos)",
                "has 81 characters in line 1 | tiene 81 caracteres en la línea 1",
                "site S1: no forecast; every hour is marked beyond the forecast | obra S1: sin pronóstico; cada hora se marca más allá del pronóstico"
            })
    void parts_are_said_too(String message, String spanish) {
        assertThat(SPANISH.it(FolderWords.read(message))).isEqualTo(spanish);
    }

    @Test
    void a_cell_is_data_whatever_it_holds() {
        assertThat(SPANISH.it(FolderWords.readCell("minutes"))).isEqualTo("minutes");
        assertThat(SPANISH.it(FolderWords.readCell("byte 0xE4"))).isEqualTo("el byte 0xE4");
    }

    /** Each file broken in many ways. */
    @Test
    void whatever_is_said_of_a_broken_folder_is_a_sentence_of_the_list() {
        assertThat(broken()).allSatisfy(small -> {
            var problems = ((FolderReading.Refused) small.read()).problems();
            assertThat(problems).isNotEmpty();
            assertThat(problems.stream().flatMap(one -> Stream.of(one.wrong(), one.accepted())))
                    .filteredOn(text -> text.contains(" "))
                    .extracting(text -> FolderWords.read(text).english())
                    .doesNotContain(AS_IT_IS);
        });
    }

    private static List<SmallFolder> broken() {
        return List.of(
                new SmallFolder()
                        .without("sites.csv")
                        .text("crews.csv", "")
                        .text("shifts.csv", "crew,date,start,end\n"),
                new SmallFolder()
                        .append("sites.csv", "S1,, x,181,Nowhere/City,VII")
                        .append("facades.csv", "S9,W,361,soon"),
                new SmallFolder()
                        .append("openings.csv", "S1,W,0,O1,9,wide,glass,A,drainage,none,soon,maybe,101,-1,")
                        .append("openings.csv", "S1,E,1,O9,900,1200,vinyl,Z,drainage,none,2026-04-13,,,,"),
                new SmallFolder()
                        .append(
                                "openings.csv",
                                "S1,W,1,O9,900,1200,vinyl,A,drainage,none,2026-04-13,,,,2026-04-12T15:30-07:00"),
                new SmallFolder().append("crews.csv", "S1,window,A;Q,47.21,-124.2,America/Los_Angeles"),
                new SmallFolder()
                        .append("shifts.csv", "C1,2026-04-15,07:00,06:00,,,")
                        .append("shifts.csv", "C1,2026-04-16,07:00,15:00,,,14:00")
                        .append("shifts.csv", "C1,2026-04-17,07:00,15:00,06:00,06:30,")
                        .append("shifts.csv", "C1,2026-04-18,07:00,15:00,,12:00,")
                        .append("shifts.csv", "C1,2026-04-19,07:00,15:00,12:00,,")
                        .append("shifts.csv", "C1,2026-04-20,07:00,15:00,12:00,11:00,")
                        .append("shifts.csv", "C1,2026-04-21,07:00,15:00,14:30,15:30,")
                        .append("shifts.csv", "C1,2026-04-13,07:00,15:00,,,")
                        .append("shifts.csv", "C9,2026-04-13,7,late,,,"),
                new SmallFolder()
                        .append("travel.csv", "C1,S1,5")
                        .append("travel.csv", "C1,C1,5")
                        .append("travel.csv", "C1,X1,5")
                        .append("travel.csv", "C1"),
                new SmallFolder().append("travel.csv", "C1,\"S1"),
                new SmallFolder().text("travel.csv", "from,to,road,to\n"),
                new SmallFolder()
                        .append("forecast.csv", "S1,2026-04-13T08:00-07:00,0,0.1,3,6,250,9,80")
                        .append("forecast.csv", "S1,2026-04-13T10:00-07:00,0,2,3,6,250,9,80"),
                new SmallFolder().append("forecast.csv", "S1,2026-04-13T08:30-07:00,0,0.1,3,6,250,9,80"),
                new SmallFolder().append("forecast.csv", "S1,2026-04-13T10:00-07:00,0,0.1,3,6,250,9,80"),
                new SmallFolder()
                        .append("labour.csv", "test,Q,0,0,0,0,0,0")
                        .append("labour.csv", "test,*,0,0.0,0,0,0,0"),
                new SmallFolder().change("labour.csv", "clad,*,20,10,0,15,10,5\n", ""),
                new SmallFolder()
                        .text(
                                "rules.csv",
                                "rule,value,site\nproposal_budget,1,S1\ndrying_h,-1,\nrain_p,seis,\ndrying_h,4,S9\n"),
                new SmallFolder()
                        .append(
                                "published.csv",
                                "C2,2026-04-13,1,S1,W,1,O2,install,2026-04-13T08:00-07:00,2026-04-13T09:20-07:00,")
                        .append(
                                "published.csv",
                                "C1,2026-04-13,1,S1,W,2,O2,install,2026-04-13T08:00-07:00,2026-04-13T07:20-07:00,")
                        .append(
                                "published.csv",
                                "C1,2026-04-14,1,S1,W,1,O1,install,2026-04-13T08:00-07:00,2026-04-13T09:20-07:00,yes")
                        .append(
                                "published.csv",
                                "C1,2026-04-13,1,S1,W,1,O1,install,2026-04-13T22:00-07:00,2026-04-13T23:20-07:00,yes"));
    }
}
