package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.kernel.Course;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.sites.Opening;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeneratedFolderTests {
    @Test
    void the_same_numbers_give_the_same_bytes() {
        assertThat(FolderWriter.files(GeneratedFolder.of(60, 3, 42)))
                .containsExactlyEntriesOf(FolderWriter.files(GeneratedFolder.of(60, 3, 42)));
    }

    @Test
    void another_seed_gives_another_folder() {
        assertThat(GeneratedFolder.of(60, 3, 42)).isNotEqualTo(GeneratedFolder.of(60, 3, 43));
    }

    @ParameterizedTest
    @CsvSource({"8,1", "8,2", "30,1", "300,10", "3000,100"})
    void a_folder_has_the_size_that_was_asked_for_and_is_sound(int openings, int sites) {
        JobFolder folder = GeneratedFolder.of(openings, sites, 7);
        assertThat(folder.openings()).hasSize(openings);
        assertThat(folder.sites()).hasSize(sites);
        var read = FolderReader.read(FolderSource.inMemory("generated", FolderWriter.files(folder)));
        assertThat(read)
                .isInstanceOfSatisfying(
                        FolderReading.Read.class,
                        sound -> assertThat(sound.folder()).isEqualTo(folder));
    }

    @Test
    void courses_have_4_to_12_openings_and_levels_start_at_1_without_a_gap() {
        Map<Course, Long> courses = GeneratedFolder.of(1000, 30, 3).openings().stream()
                .collect(Collectors.groupingBy(Opening::course, Collectors.counting()));
        assertThat(courses.values()).allMatch(length -> length >= 4 && length <= 12);
        assertThat(courses.keySet())
                .allMatch(course ->
                        course.level() == 1 || courses.containsKey(new Course(course.facade(), course.level() - 1)));
    }

    @Test
    void every_task_has_a_crew_of_its_trade() {
        JobFolder folder = GeneratedFolder.of(300, 10, 5);
        var trades = folder.crews().stream().map(crew -> crew.trade()).collect(Collectors.toSet());
        for (Opening opening : folder.openings())
            for (Task task : opening.tasks()) assertThat(trades).contains(task.trade());
        assertThat(trades).contains(Trade.TESTER);
    }

    @Test
    void it_rains_but_most_hours_are_dry() {
        var hours = GeneratedFolder.of(300, 10, 5).forecasts().stream()
                .flatMap(forecast -> forecast.hours().stream())
                .toList();
        double wet = hours.stream()
                        .filter(hour -> hour.rainMm() >= 0.2 && hour.rainProbability() >= 0.3)
                        .count()
                / (double) hours.size();
        assertThat(wet).isBetween(0.08, 0.25);
    }

    /** The promise: whatever the seed, a short search leaves nothing out. */
    @ParameterizedTest
    @CsvSource({"8,1", "8,2", "24,3", "40,4", "120,5"})
    void all_the_work_can_be_planned(int openings, long seed) {
        JobFolder folder = GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), seed);
        Plan plan = Planner.standard().plan(folder, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        assertThat(plan.unplanned()).isEmpty();
        assertThat(plan.ledger().medium()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        7     | 1   | 7 openings: 8 to 20000 are accepted
        20001 | 700 | 20001 openings: 8 to 20000 are accepted
        30    | 8   | 8 sites: 1 to 7 are accepted for 30 openings
        30    | 0   | 0 sites: 1 to 7 are accepted for 30 openings
        """)
    void a_size_outside_the_limits_is_refused(int openings, int sites, String message) {
        assertThatThrownBy(() -> GeneratedFolder.of(openings, sites, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }
}
