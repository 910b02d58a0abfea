package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TakeOffCommandTests extends CommandLineOverAJob {
    @BeforeEach
    void planAJob() {
        plan(12, 100);
    }

    private int takeOff(String... more) {
        return run(Stream.concat(Stream.of("takeoff", "--in", in("job"), "--plan", in("plan")), Stream.of(more))
                .toArray(String[]::new));
    }

    private List<String> lines(String file) throws IOException {
        return Files.readAllLines(place.resolve("lists").resolve(file));
    }

    @Test
    void every_install_of_the_plan_is_loaded_once_and_each_strip_is_cut() throws IOException {
        assertThat(takeOff("--out", in("lists"))).as(err.toString()).isZero();

        long installs = Files.readAllLines(place.resolve("plan/visits.csv")).stream()
                .filter(line -> line.contains(",install,"))
                .count();
        assertThat(lines("take_off_openings.csv")).hasSize((int) installs + 1);
        assertThat(windows("take_off_days.csv")).isEqualTo(windows("take_off_openings.csv"));
        assertThat(lines("cut_list.csv").stream().filter(line -> line.contains(",head,")))
                .hasSize((int) installs);
        assertThat(out.toString()).contains("cartridges of sealant", "longest rest", "the window maker's instructions");
    }

    private int windows(String file) throws IOException {
        int column = List.of(lines(file).getFirst().split(",")).indexOf("windows");
        return lines(file).stream()
                .skip(1)
                .mapToInt(line -> Integer.parseInt(line.split(",")[column]))
                .sum();
    }

    @Test
    void one_crews_day_is_asked_for_alone() throws IOException {
        assertThat(takeOff("--out", in("lists"))).isZero();
        String[] first = lines("take_off_days.csv").get(1).split(",");

        assertThat(takeOff("--crew", first[0], "--date", first[1], "--out", in("one")))
                .isZero();

        assertThat(Files.readAllLines(place.resolve("one/take_off_days.csv"))).hasSize(2);
    }

    @Test
    void rolls_too_short_and_crews_that_are_not_there_are_refused() throws IOException {
        assertThat(takeOff("--crew", "nobody")).isEqualTo(2);
        assertThat(err.toString()).contains("no crew nobody", "accepted: a crew of crews.csv");

        Files.writeString(place.resolve("job/rules.csv"), "rule,value\nstrip_roll_m,1\n");
        assertThat(takeOff()).isEqualTo(2);
        assertThat(err.toString()).contains("mm long and a roll 1000 mm", "accepted: a roll that long or longer");
    }
}
