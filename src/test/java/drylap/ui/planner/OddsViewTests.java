package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.ChangedRules;
import drylap.planning.JobFolders;
import drylap.planning.PlanId;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.RuleRequest;
import drylap.risk.OddsRuns;
import drylap.risk.OddsState;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import java.time.Duration;
import java.util.List;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@ViewTest
class OddsViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private ChangedRules rules;

    @Autowired
    private OddsRuns odds;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);
    private PlanId plan = new PlanId(0);

    @BeforeEach
    void a_plan_is_published() {
        var quay = new QuayFolder().folder();
        folder = folders.save("quay", quay);
        var made = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        plan = plans.save(folder, made, quay);
        publications.publish(people.scheduler(), folder, plan, null);
    }

    @Test
    void whoever_opens_the_page_has_the_plan_reckoned_and_reads_what_it_may_bring() {
        people.signIn(people.scheduler());
        navigate(OddsView.class);
        arrives("Hand-over of facades");

        assertThat(text(view()))
                .contains("Of the published plan.")
                .contains("Reckoned", "from 2\u2009000 trials (seed 1)")
                .containsPattern("Quay Nine, west.*In 8 of 10 cases by \\w{3} \\d+ \\w{3} \\d\\d:\\d\\d ± \\d+\\.\\d h")
                .containsPattern("Due Fri 17 Apr: kept in (\\d+(\\.\\d)? ± \\d+(\\.\\d)? of 100|all of)")
                .contains("Openings most likely to get wet while open")
                .containsPattern("covers put on.*crew-days are worked where \\d+ are planned")
                .doesNotContain("These odds are old");
        assertThat(button("Reckon anew").isVisible()).isTrue();
    }

    @Test
    void weather_beyond_the_forecast_is_told_apart_wherever_it_is_used() {
        people.signIn(people.scheduler());
        navigate(OddsView.class);
        arrives("Hand-over of facades");

        assertThat(text(view()))
                .contains("Quay Nine: by the forecast until Tue 14 Apr 12:00, from its climate after that (")
                .contains("Mill Row: no forecast; all of its weather is drawn from its climate (assumed");
        assertThat(find(NativeTable.class).all().stream().map(OddsViewTests::text))
                .filteredOn(table -> table.contains("Weather of that day"))
                .hasSize(2)
                .allMatch(table -> table.contains("climate"));
    }

    @Test
    void assumptions_lead_to_where_they_are_set() {
        people.signIn(people.scheduler());
        navigate(OddsView.class);
        arrives("Hand-over of facades");

        assertThat(text(view()))
                .contains("A crew sees rain coming 60 min ahead", "Work takes 0.62 to 1.83 times")
                .contains("That spread is assumed");
        assertThat(find(RouterLink.class).all()).extracting(RouterLink::getHref).contains("rules", "crews", "sites");
    }

    @Test
    void odds_of_yesterday_are_never_shown_as_those_of_today() {
        reckoned();
        rules.change(people.scheduler(), folder, new RuleRequest(null, Rule.COVER_MIN, 45.0, "a larger cover", 0));
        // whoever may not have it reckoned sees the old ones, and that they are old
        people.signIn(people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("Q"))), null));

        navigate(OddsView.class);

        assertThat(text(view()))
                .contains("These odds are old. Since they were reckoned something changed: the rules.")
                .contains("Hand-over of facades");
        assertThat(visibleButtons()).doesNotContain("Reckon anew", "Reckon the odds");
    }

    @Test
    void old_odds_are_reckoned_anew_when_someone_who_may_opens_the_page() {
        reckoned();
        rules.change(people.scheduler(), folder, new RuleRequest(null, Rule.COVER_MIN, 45.0, "a larger cover", 0));
        people.signIn(people.scheduler());

        navigate(OddsView.class);

        Awaitility.await().pollInSameThread().atMost(Duration.ofSeconds(60)).untilAsserted(() -> {
            whatIsPushedArrives();
            assertThat(text(view())).contains("Reckoned").doesNotContain("These odds are old");
        });
    }

    @Test
    void what_was_stopped_begins_again_only_when_asked() {
        Person who = people.signIn(people.scheduler());
        odds.begin(who, folder, plan);
        odds.stop(who, folder, plan);
        Awaitility.await()
                .atMost(Duration.ofSeconds(60))
                .until(() ->
                        odds.state(who, folder, plan).orElseThrow().status().ended());
        // a quick machine may have come to the end before the stop
        if (odds.state(who, folder, plan).orElseThrow().odds() != null) return;

        navigate(OddsView.class);
        assertThat(text(view())).contains("Stopped before its end.");
        assertThat(odds.underWay(who, plan)).isEmpty();

        test(button("Reckon the odds")).click();
        arrives("Hand-over of facades");
    }

    @Test
    void who_sees_one_site_reads_nothing_of_the_other() {
        reckoned();
        people.signIn(people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("M"))), null));

        navigate(OddsView.class);

        assertThat(text(view()))
                .contains("Mill Row", "not all of them are yours")
                .doesNotContain("Quay Nine", "QW1-01", "QW2-01", "covers put on");
    }

    @Test
    void who_may_not_ask_is_told_who_may() {
        people.signIn(people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("M"))), null));

        navigate(OddsView.class);

        assertThat(text(view()))
                .contains("not reckoned yet. Someone who plans every site of the job folder can have it done.");
        assertThat(visibleButtons()).doesNotContain("Reckon the odds");
        assertThat(odds.state(people.scheduler(), folder, plan)).isEmpty();
    }

    @Test
    void a_folder_without_a_plan_leads_to_the_week_sheet() {
        folders.save("bare", new QuayFolder().folder());
        people.signIn(people.scheduler());

        navigate(OddsView.class);

        assertThat(text(view())).contains("no plan yet whose odds could be reckoned");
    }

    @Test
    void every_table_can_be_taken_along_as_a_file() {
        people.signIn(people.scheduler());
        navigate(OddsView.class);
        arrives("Hand-over of facades");

        assertThat(find(Anchor.class).all())
                .extracting(one -> one.getElement().getAttribute("download"))
                .contains(
                        "odds-hand-overs.csv", "odds-hand-over-by-day.csv", "odds-crew-days.csv", "odds-openings.csv");
    }

    private void reckoned() {
        Person who = people.scheduler();
        odds.begin(who, folder, plan);
        Awaitility.await()
                .atMost(Duration.ofSeconds(60))
                .until(() ->
                        odds.state(who, folder, plan).filter(OddsState::holds).isPresent());
    }

    private void arrives(String words) {
        Awaitility.await().pollInSameThread().atMost(Duration.ofSeconds(60)).untilAsserted(() -> {
            whatIsPushedArrives();
            assertThat(text(view())).contains(words);
        });
    }

    private OddsView view() {
        return find(OddsView.class).single();
    }

    private Button button(String words) {
        return find(Button.class).withText(words).single();
    }

    private List<String> visibleButtons() {
        return find(Button.class).all().stream().map(Button::getText).toList();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    private static void whatIsPushedArrives() {
        var session = UI.getCurrent().getSession();
        session.unlock();
        session.lock();
    }
}
