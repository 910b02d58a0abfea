package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.button.Button;
import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFixture;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.progress.MarkRequest;
import drylap.progress.MarkResult.Marked;
import drylap.progress.StepLog;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.sites.Opening;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@ViewTest
class PaceViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private CurrentFolders current;

    @Autowired
    private StepLog log;

    @Autowired
    private TestPeople people;

    @Autowired
    private Clock clock;

    private final JobFolder job = JobFixture.job(60, 1);
    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_scheduler_looks_at_a_folder() {
        people.signIn(people.scheduler());
        folder = folders.save("pace", job);
    }

    /** A crew installs a dozen openings of one method, twice as slowly as planned. */
    private Opening slowInstalls() {
        Person crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "window-1");
        List<Opening> bare = job.openings().stream()
                .filter(one -> one.done() == 0)
                .filter(one -> one.method() == job.openings().getFirst().method())
                .limit(12)
                .toList();
        Instant start = clock.instant().truncatedTo(ChronoUnit.DAYS).minus(Duration.ofDays(40));
        for (int i = 0; i < bare.size(); i++)
            install(crew, bare.get(i), start.plus(Duration.ofDays(i)).plus(Duration.ofHours(19)));
        return bare.getFirst();
    }

    private void install(Person crew, Opening opening, Instant from) {
        var lines = opening.workList().lines().stream()
                .filter(WorkLine::installBlock)
                .toList();
        tick(crew, opening, "RO", from);
        int seconds = 120 * job.labour().installMinutes(opening) / lines.size();
        for (int i = 0; i < lines.size(); i++)
            tick(crew, opening, lines.get(i).code(), from.plusSeconds((i + 1L) * seconds));
    }

    private void tick(Person crew, Opening opening, String line, Instant at) {
        assertThat(log.mark(crew, MarkRequest.done(UUID.randomUUID(), folder, opening.id(), line, at)))
                .isInstanceOf(Marked.class);
    }

    private String page() {
        return navigate(CrewsView.class).getElement().getTextRecursively();
    }

    @Test
    void without_a_log_the_labour_table_is_all_there_is() {
        assertThat(page()).contains("Install minutes").contains("the labour table is all there is");
    }

    @Test
    void a_suggestion_is_accepted_and_taken_back() {
        var opening = slowInstalls();
        assertThat(page()).contains("Method " + opening.method()).contains("lately");
        int before = current.load(folder).labour().installMinutes(opening);

        press("Plan installs of method %s with".formatted(opening.method()));
        assertThat(current.load(folder).labour().installMinutes(opening)).isGreaterThan(before * 5 / 4);
        assertThat(page()).contains("accepted by");

        press("Take installs of method %s back".formatted(opening.method()));
        assertThat(current.load(folder).labour().installMinutes(opening)).isEqualTo(before);
    }

    @Test
    void a_suggestion_is_declined() {
        var opening = slowInstalls();
        page();

        press("Leave installs of method %s as planned".formatted(opening.method()));

        assertThat(current.load(folder).labour()).isEqualTo(job.labour());
        assertThat(page()).contains("left as planned by").doesNotContain("Plan installs");
    }

    @Test
    void a_scheduler_of_one_site_sees_its_own_and_answers_nothing() {
        SiteId site = slowInstalls().facade().site();
        people.signIn(people.add(Role.SCHEDULER, Reach.of(List.of(site)), null));

        assertThat(page()).contains("lately");
        assertThat(find(Button.class).all())
                .noneMatch(button ->
                        button.getText().startsWith("Plan ") || button.getText().startsWith("Leave"));
    }

    private void press(String label) {
        test(find(Button.class).all().stream()
                        .filter(button -> button.getAriaLabel().orElse("").startsWith(label))
                        .findFirst()
                        .orElseThrow())
                .click();
    }
}
