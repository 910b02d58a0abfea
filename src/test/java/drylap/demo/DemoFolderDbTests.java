package drylap.demo;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.DbTest;
import drylap.crews.Shift;
import drylap.kernel.FolderId;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRuns;
import drylap.planning.StoredFolder;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.Comparator;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.TestPropertySource;

/** The sample as the program carries it, in a database that was empty when the application became ready. */
@DbTest
@Import(DemoFolder.class)
@TestPropertySource(properties = "drylap.demo=sample-data/harbour-week")
class DemoFolderDbTests {
    @Autowired
    DemoFolder demo;

    @Autowired
    JobFolders folders;

    @Autowired
    PlanRuns runs;

    @Test
    void a_new_database_has_the_sample_in_this_week_and_a_run_that_plans_it() {
        assertThat(folders.list()).extracting(StoredFolder::name).containsExactly("harbour-week");
        FolderId id = folders.list().getFirst().id();
        JobFolder sample = folders.load(id);
        ZoneId zone = sample.sites().getFirst().zone();

        LocalDate first = sample.shifts().stream()
                .map(Shift::date)
                .min(Comparator.naturalOrder())
                .orElseThrow();

        assertThat(first.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)))
                .isEqualTo(LocalDate.now(zone).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)));
        assertThat(runs.state(id)).isPresent();
    }

    @Test
    void a_database_that_has_a_folder_is_left_as_it_is() {
        demo.load();

        assertThat(folders.list()).hasSize(1);
    }
}
