package drylap.demo;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.DbTest;
import drylap.crews.Shift;
import drylap.kernel.FolderId;
import drylap.kernel.Task;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRuns;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.StoredFolder;
import drylap.planning.Visit;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.Comparator;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The sample as the program carries it, in a database that was empty when the application became ready. */
@DbTest
@SampleForTests
class DemoFolderDbTests {
    @Autowired
    DemoFolder demo;

    @Autowired
    JobFolders folders;

    @Autowired
    PlanRuns runs;

    @Autowired
    Plans plans;

    @Autowired
    Publications publications;

    @Autowired
    OpeningStates states;

    @Autowired
    CurrentFolders current;

    @Autowired
    Clock clock;

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
    void the_sample_is_published_and_what_is_past_of_it_is_done() {
        FolderId id = folders.list().getFirst().id();
        var plan = plans.load(publications.latest(id).orElseThrow().plan());
        Instant now = clock.instant();

        var past = plan.visits().stream()
                .filter(visit -> visit.task() == Task.INSTALL && visit.end().isBefore(now))
                .map(Visit::opening)
                .toList();

        assertThat(states.states(id))
                .filteredOn(state -> past.contains(state.opening().id()))
                .allMatch(OpeningState::installed);
        assertThat(current.load(id).published())
                .allMatch(one -> !one.visit().start().isBefore(now));
    }

    @Test
    void a_database_that_has_a_folder_is_left_as_it_is() {
        demo.load();

        assertThat(folders.list()).hasSize(1);
    }
}
