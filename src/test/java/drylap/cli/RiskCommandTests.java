package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class RiskCommandTests extends CommandLineOverAJob {
    @BeforeEach
    void planAJob() {
        plan(12, 100);
    }

    private int risk(String... more) {
        String[] words = {"risk", "--in", in("job"), "--plan", in("plan")};
        return run(java.util.stream.Stream.concat(java.util.Arrays.stream(words), java.util.Arrays.stream(more))
                .toArray(String[]::new));
    }

    @Test
    void a_plan_is_replayed_and_its_figures_printed_and_written() throws IOException {
        assertThat(risk("--trials", "200", "--seed", "5", "--out", in("risk")))
                .as(err.toString())
                .isZero();

        assertThat(out.toString())
                .contains("200 trials, seed 5", "8 of 10", "Days that drive the hand-overs", "never a statement")
                .contains("beyond the forecast");
        assertThat(Files.readAllLines(place.resolve("risk/risk_openings.csv")))
                .hasSize(13)
                .allMatch(line -> line.endsWith("200,5") || line.endsWith("trials,seed"));
        assertThat(place.resolve("risk/risk_handovers.csv")).isNotEmptyFile();
        assertThat(place.resolve("risk/risk_crew_days.csv")).isNotEmptyFile();
        assertThat(place.resolve("risk/risk_days.csv")).isNotEmptyFile();
    }

    @Test
    void the_same_seed_prints_the_same() {
        assertThat(risk("--trials", "200")).isZero();
        String first = out.toString();
        out.getBuffer().setLength(0);
        assertThat(risk("--trials", "200")).isZero();

        assertThat(out.toString()).isEqualTo(first);
    }

    @Test
    void normals_are_used_beyond_the_forecast() throws IOException {
        Files.writeString(place.resolve("climate.csv"), "month,rain_mm,rain_days\n4,120,17\n5,80,13\n");

        assertThat(risk("--trials", "200", "--climate", in("climate.csv")))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("monthly normals");
    }

    @Test
    void every_mistake_in_the_normals_is_named_with_what_would_be_accepted() throws IOException {
        Files.writeString(
                place.resolve("climate.csv"),
                "month,rain_mm,rain_days,site\n13,120,17,\n4,-1,13,\n2,10,30,\n6,10,3,nowhere\n7,10,3,\n7,10,3,\n");

        assertThat(risk("--trials", "200", "--climate", in("climate.csv"))).isEqualTo(2);
        assertThat(err.toString().lines().filter(line -> line.contains("climate.csv")))
                .hasSize(5);
        assertThat(err.toString()).contains("nowhere", "is given twice", "outside 0..28");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void too_few_trials_are_refused() {
        assertThat(risk("--trials", "3")).isEqualTo(2);
        assertThat(err.toString()).contains("3 trials; accepted: 100 to 100000");
    }
}
