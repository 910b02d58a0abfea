package drylap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
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
    void a_day_that_is_asked_for_alone_is_cut_as_it_is_among_all() throws IOException {
        assertThat(takeOff("--out", in("lists"))).isZero();
        String[] first = lines("take_off_days.csv").get(1).split(",");
        List<String> all = lines("cut_list.csv").stream()
                .filter(line -> line.startsWith(first[0] + "," + first[1] + ","))
                .toList();

        assertThat(takeOff("--crew", first[0], "--date", first[1], "--out", in("lists")))
                .isZero();

        assertThat(lines("cut_list.csv").stream().skip(1)).isNotEmpty().containsExactlyElementsOf(all);
    }

    @Test
    void the_crews_of_a_day_together_take_what_each_of_them_takes() throws IOException {
        assertThat(takeOff("--out", in("lists"))).isZero();
        Map<String, Integer> vans = fasteners(line -> true);

        assertThat(takeOff("--together", "--out", in("lists"))).isZero();

        assertThat(fasteners(line -> line.startsWith(","))).isNotEmpty().isEqualTo(vans);
        assertThat(fasteners(line -> !line.startsWith(","))).isEqualTo(vans);
        assertThat(out.toString()).contains("crew ");
    }

    /** By date, of the lines that are let through. */
    private Map<String, Integer> fasteners(Predicate<String> of) throws IOException {
        int column = List.of(lines("take_off_days.csv").getFirst().split(",")).indexOf("fasteners");
        return lines("take_off_days.csv").stream()
                .skip(1)
                .filter(of)
                .map(line -> line.split(","))
                .collect(Collectors.toMap(
                        cells -> cells[1], cells -> Integer.parseInt(cells[column]), Integer::sum, TreeMap::new));
    }

    @Test
    void a_site_is_taken_off_without_a_plan_wall_by_wall_and_in_all() throws IOException {
        String site = Files.readAllLines(place.resolve("job/sites.csv")).get(1).split(",")[0];
        long openings = Files.readAllLines(place.resolve("job/openings.csv")).stream()
                .filter(line -> line.startsWith(site + ","))
                .count();

        assertThat(run("takeoff", "--in", in("job"), "--site", site, "--whole", "--out", in("lists")))
                .as(err.toString())
                .isZero();

        List<String> sums = lines("take_off_site.csv");
        assertThat(sums.getLast()).startsWith("%s,whole,,%d,".formatted(site, openings));
        assertThat(windows("take_off_site.csv")).isEqualTo(2 * (int) openings);
        assertThat(lines("cut_list.csv").stream().filter(line -> line.contains(",head,")))
                .hasSize((int) openings);
        assertThat(out.toString()).contains("Site %s, whole walls: %d window".formatted(site, openings), "wall ");
    }

    @Test
    void what_is_not_there_is_refused_with_what_would_be_accepted() {
        assertThat(takeOff("--crew", "nobody")).isEqualTo(2);
        assertThat(err.toString()).contains("no crew nobody", "accepted: a crew of crews.csv");
        assertThat(run("takeoff", "--in", in("job"), "--site", "nowhere")).isEqualTo(2);
        assertThat(err.toString()).contains("no site nowhere", "accepted: a site of sites.csv");
        assertThat(takeOff("--site", "S1")).isEqualTo(2);
        assertThat(err.toString()).contains("mutually exclusive");
        assertThat(takeOff("--crew", "W1", "--together")).isEqualTo(2);
        assertThat(err.toString()).contains("accepted: it, or --crew");
        assertThat(run("takeoff", "--in", in("job"))).isEqualTo(2);
        assertThat(err.toString()).contains("Missing required argument");
    }

    @Test
    void strips_longer_than_a_roll_are_cut_in_pieces() throws IOException {
        Files.writeString(place.resolve("job/rules.csv"), "rule,value\nstrip_roll_m,1\n");

        assertThat(takeOff("--out", in("lists"))).isZero();

        assertThat(out.toString()).contains("piece 1 of 2", "lap by 152 mm (6 in)", "Common practice, no source");
        assertThat(lines("cut_list.csv")).anyMatch(line -> line.endsWith(",2,2"));
    }
}
