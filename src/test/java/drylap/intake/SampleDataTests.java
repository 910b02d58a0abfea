package drylap.intake;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.kernel.Task;
import drylap.planning.CoverNow;
import drylap.planning.JobFolder;
import drylap.planning.OpenWindow;
import drylap.planning.Plan;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.UnplannedReason;
import drylap.planning.UnplannedTask;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The stories that {@code sample-data/README.md} tells do happen, in any plan however short the search. */
class SampleDataTests {
    private static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");
    private static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);

    final JobFolder harbour = read(FolderSource.of(Path.of("sample-data/harbour-week")));

    @Test
    void harbour_week_has_4_sites_120_openings_every_method_and_every_second_layer() {
        assertThat(harbour.sites()).hasSize(4);
        assertThat(harbour.openings()).hasSize(120);
        assertThat(harbour.openings()).extracting(opening -> opening.method()).contains(Method.values());
        assertThat(harbour.openings())
                .extracting(opening -> opening.secondLayer())
                .contains(SecondLayer.values());
    }

    @Test
    void the_program_carries_harbour_week_in_its_resources() {
        assertThat(read(FolderSource.classpath("sample-data/harbour-week"))).isEqualTo(harbour);
    }

    @Test
    void its_week_happens_as_told() {
        Plan plan = plan(harbour);
        assertThat(plan.coverNow()).map(CoverNow::opening).map(Object::toString).containsExactly("M-W-102");
        assertThat(plan.unplanned())
                .filteredOn(task -> task.task() == Task.INSTALL)
                .extracting(task -> task.opening().value(), UnplannedTask::reason)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("N-S-401", UnplannedReason.NO_DRY_WINDOW),
                        org.assertj.core.groups.Tuple.tuple("M-S-301", UnplannedReason.NO_DELIVERY));
        assertThat(plan.visits()).noneMatch(visit -> visit.date().equals(MONDAY.plusDays(2)));
        assertThat(plan.visits())
                .anyMatch(visit -> visit.opening().value().equals("Q-W-103")
                        && visit.date().equals(MONDAY)
                        && visit.task() == Task.INSTALL);
    }

    @Test
    void on_tuesday_the_west_wall_dries_later_than_the_east_wall() {
        List<OpenWindow> windows = plan(harbour).openHours();
        assertThat(firstOpen(windows, "W", MONDAY.plusDays(1))).isEqualTo(at(MONDAY.plusDays(1), 10));
        assertThat(firstOpen(windows, "E", MONDAY.plusDays(1))).isEqualTo(at(MONDAY.plusDays(1), 7));
    }

    @Test
    void one_wall_can_be_planned_whole() {
        JobFolder wall = read(FolderSource.of(Path.of("sample-data/one-wall")));
        assertThat(wall.openings()).hasSize(12);
        assertThat(plan(wall).unplanned()).isEmpty();
    }

    private static Instant firstOpen(List<OpenWindow> windows, String facade, LocalDate date) {
        return windows.stream()
                .filter(window -> window.facade().site().value().equals("QUAY"))
                .filter(window -> window.facade().facade().equals(facade) && window.task() == Task.INSTALL)
                .map(window -> window.when().from())
                .filter(from -> from.atZone(ZONE).toLocalDate().equals(date))
                .min(Instant::compareTo)
                .orElseThrow();
    }

    private static Instant at(LocalDate date, int hour) {
        return date.atTime(hour, 0).atZone(ZONE).toInstant();
    }

    private static Plan plan(JobFolder folder) {
        return Planner.standard().plan(folder, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
    }

    private static JobFolder read(FolderSource source) {
        return switch (FolderReader.read(source)) {
            case FolderReading.Read read -> read.folder();
            case FolderReading.Refused refused -> throw new AssertionError(refused.text());
        };
    }
}
