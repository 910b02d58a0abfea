package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.planning.JobFixture;
import drylap.planning.JobFolder;
import drylap.whatif.OtherForecast;
import drylap.whatif.Scenario;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScenarioReaderTests {
    private static final String HEADER =
            "scenario,change,crew,like,site,facade,opening,date,days,from,until,percent,file\n";

    @TempDir
    Path place;

    private final JobFolder folder = JobFixture.job(20, 1);

    private ScenarioReading read(String rows) throws IOException {
        return ScenarioReader.read(Files.writeString(place.resolve("scenarios.csv"), HEADER + rows), folder);
    }

    @Test
    void every_change_is_read_and_those_of_a_name_stand_together() throws IOException {
        Files.writeString(
                place.resolve("wet.csv"),
                "site,hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity\n"
                        + "S1,2026-04-13T00:00-07:00,3,1,5,8,200,10,80\n");
        ScenarioReading reading = read("""
                a,add crew,window-9,window-1,,,,2026-04-14,,,,,
                b,drop day,window-1,,,,,2026-04-14,,,,,
                a,delay delivery,,,S1,N,,,2,,,,
                b,delay delivery,,,,,W0001,,1,,,,
                b,rain,,,S1,,,,,2026-04-13T09:00-07:00,2026-04-13T11:00-07:00,,
                c,no rain,,,S1,,,,,2026-04-13T09:00-07:00,2026-04-13T11:00-07:00,,
                c,rain by percent,,,,,,,,,,-20,
                d,forecast,,,,,,,,,,,wet.csv
                e,drop day,,,S1,,,2026-04-14,,,,,
                """);
        List<Scenario> scenarios = ((ScenarioReading.Read) reading).scenarios();
        assertThat(scenarios).extracting(Scenario::name).containsExactly("a", "b", "c", "d", "e");
        assertThat(scenarios).extracting(one -> one.changes().size()).containsExactly(2, 3, 2, 1, 1);
        OtherForecast wet = (OtherForecast) scenarios.get(3).changes().getFirst();
        assertThat(wet.forecasts().getFirst().hours()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a,fly,,,,,,,,,,,|2 change|fly|add crew, drop day",
                "a,add crew,window-1,window-1,,,,2026-04-14,,,,,|2 crew|window-1|not taken",
                "a,add crew,more,nobody,,,,2026-04-14,,,,,|2 like|nobody|crews.csv",
                "a,add crew,more,window-1,,,,soon,,,,,|2 date|soon|date",
                "a,drop day,,,,,,2026-04-14,,,,,|2 crew|blank|one of both",
                "a,drop day,window-1,,,,,2020-04-14,,,,,|2 change|no crew of window-1|allows",
                "a,delay delivery,,,S1,X,,,2,,,,|2 facade|X|facades.csv",
                "a,delay delivery,,,,,W0001,,0,,,,|2 days|0|1 to 365",
                "a,rain,,,S1,,,,,2026-04-13T09:00-07:00,2026-04-13T09:00-07:00,,|2 until|not after from|later",
                "a,rain by percent,,,,,,,,,,-200,|2 percent|-200|-100 to 1000",
                "a,forecast,,,,,,,,,,,nowhere.csv|nowhere.csv|is|accepted",
                "as it is,rain by percent,,,,,,,,,,20,|2 scenario|as it is|another name",
            })
    void a_bad_row_is_refused_with_its_place_value_and_what_is_accepted(
            String row, String where, String value, String accepted) throws IOException {
        assertThat(read(row + "\n"))
                .isInstanceOfSatisfying(
                        ScenarioReading.Refused.class,
                        refused -> assertThat(refused.text()).contains(where, value, accepted));
    }

    @Test
    void all_bad_rows_are_told_together() throws IOException {
        ScenarioReading.Refused refused =
                (ScenarioReading.Refused) read("a,fly,,,,,,,,,,,\nb,rain by percent,,,,,,,,,,x,\n");
        assertThat(refused.text()).contains("scenarios.csv:2 change", "scenarios.csv:3 percent");
    }

    @Test
    void a_file_that_is_sent_cannot_have_another_file_of_this_machine_read() throws IOException {
        Path wet = Files.writeString(
                place.resolve("wet.csv"),
                "site,hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity\n"
                        + "S1,2026-04-13T00:00-07:00,3,1,5,8,200,10,80\n");
        String sent = HEADER + "d,forecast,,,,,,,,,,,%s\n".formatted(wet);

        ScenarioReading reading = ScenarioReader.readAlone("mine.csv", sent.getBytes(StandardCharsets.UTF_8), folder);

        assertThat(reading)
                .isInstanceOfSatisfying(
                        ScenarioReading.Refused.class,
                        refused -> assertThat(refused.text())
                                .startsWith("mine.csv:2 file: ")
                                .contains("is no file"));
    }
}
