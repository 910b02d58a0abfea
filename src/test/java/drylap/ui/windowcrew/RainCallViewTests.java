package drylap.ui.windowcrew;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.select.Select;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.progress.MarkRequest;
import drylap.progress.StepLog;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import drylap.ui.planner.ViewTest;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** One opening stands open at Quay Nine and one at Mill Row; no forecast reaches today. */
@ViewTest
class RainCallViewTests extends SpringBrowserlessTest {
    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private StepLog log;

    @Autowired
    private Clock clock;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void publish_a_plan() {
        folder = folders.save("quay", new QuayFolder().folder());
        var now = clock.instant();
        var plan = new Plan(
                now,
                now.plus(Duration.ofDays(2)),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Ledger(List.of(), 0, 0, 0));
        publications.publishSample(folder, plans.save(folder, plan));
    }

    private static String open() {
        UI.getCurrent().navigate(RainCallView.class);
        return page();
    }

    private static String page() {
        return UI.getCurrent()
                .getInternals()
                .getActiveRouterTargetsChain()
                .getFirst()
                .getElement()
                .getOuterHTML();
    }

    private Button button(String name) {
        return $(Button.class).all().stream()
                .filter(one -> one.getAriaLabel().orElse(one.getText()).equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_crew_sees_what_stands_open_at_its_site_and_the_way_to_its_steps() {
        people.signIn(people.add(Role.WINDOW_CREW, Reach.of(List.of(new SiteId("Q"))), "W1"));

        assertThat(open())
                .contains("Rain call, Quay Nine", "QW1-01", "#%d/QW1-01".formatted(folder.value()))
                .contains("No rain within 24 hours, by the forecast", "sends nobody up")
                .doesNotContain("MS1-02");
    }

    @Test
    void rain_that_is_seen_counts_until_the_forecast_is_asked_again() {
        people.signIn(people.add(Role.WINDOW_CREW, Reach.of(List.of(new SiteId("Q"))), "W1"));
        open();

        test(button("Rain 5 minutes sooner")).click();
        assertThat(page()).contains("Rain in 30 min").contains("as you see it; the forecast has no rain");
        test(button("Rain 5 minutes sooner")).click();
        assertThat(page()).contains("Rain in 25 min");
        test(button("Rain 5 minutes later")).click();
        assertThat(page()).contains("Rain in 30 min").containsPattern("about \\d+\\.\\d L if nothing is done");

        test(button("As the forecast has it")).click();
        assertThat(page()).contains("No rain within 24 hours, by the forecast").doesNotContain("as you see it");
    }

    @Test
    void rain_now_leaves_time_for_covers_only() {
        people.signIn(people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("Q"))), null));
        open();
        for (int i = 0; i < 8; i++) test(button("Rain 5 minutes sooner")).click();

        assertThat(page()).contains("Rain now").contains(">Cover<").doesNotContain(">Close<");
    }

    @Test
    void where_nothing_stands_open_it_says_so() {
        var who = people.signIn(people.add(Role.WINDOW_CREW, Reach.of(List.of(new SiteId("Q"))), "W1"));
        var opening = new OpeningId("QW1-01");
        new QuayFolder()
                .folder().openings().stream()
                        .filter(one -> one.id().equals(opening))
                        .flatMap(one -> one.workList().lines().stream())
                        .filter(line -> line.installBlock())
                        .forEach(line -> log.mark(
                                who,
                                MarkRequest.done(UUID.randomUUID(), folder, opening, line.code(), clock.instant())));

        assertThat(open()).contains("Nothing stands open at Quay Nine").doesNotContain("QW1-01");
    }

    @Test
    void whoever_sees_two_sites_chooses_and_says_where_they_stand() {
        people.signIn(people.scheduler());
        open();

        assertThat($(Select.class).all().stream().filter(one -> one.isVisible()))
                .extracting(Select::getLabel)
                .contains("Site", "Where you stand now");
    }
}
