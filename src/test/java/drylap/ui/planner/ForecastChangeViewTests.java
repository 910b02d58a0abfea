package drylap.ui.planner;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.RouterLink;
import drylap.forecasts.ForecastChoices;
import drylap.forecasts.ForecastFiles;
import drylap.forecasts.ForecastReading;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.PlanRuns;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.sites.Site;
import drylap.ui.QuayFolder;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A plan is published by the folder's own forecast; then a file of a wet Monday is brought in for Quay Nine. */
@ViewTest
class ForecastChangeViewTests extends SpringBrowserlessTest {
    private static final SiteId QUAY = new SiteId("Q");

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private PlanRuns runs;

    @Autowired
    private ForecastFiles files;

    @Autowired
    private ForecastChoices choices;

    @Autowired
    private TestPeople people;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_plan_is_published() {
        var quay = new QuayFolder().folder();
        folder = folders.save("quay", quay);
        var plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        publications.publish(people.scheduler(), folder, plans.save(folder, plan, quay), null);
    }

    private void aWetFileComes(Person who) {
        Site site = folders.load(folder).sites().getFirst();
        var text = new StringBuilder(
                "hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity\n");
        for (int hour = 0; hour < 48; hour++)
            text.append("2026-04-%02dT%02d:00-07:00,%s,5,8,262,12,90%n"
                    .formatted(13 + hour / 24, hour % 24, hour < 15 ? "2,0.9" : "0,0"));
        var read = (ForecastReading.Read) files.look(who, site, text.toString().getBytes(UTF_8));
        files.use(who, site, read.forecast(), choices.of(who, QUAY));
    }

    private void noFileAnyMore(Person who) {
        var now = choices.of(who, QUAY);
        choices.choose(who, new drylap.forecasts.ForecastChoice(QUAY, null, null, 2, now.version(), "", null));
    }

    @Test
    void a_wet_forecast_shuts_hours_breaks_visits_with_their_cause_and_leads_to_planning_again() {
        Person who = people.scheduler();
        aWetFileComes(who);
        people.signIn(who);
        var view = navigate(ForecastChangeView.class);

        assertThat(text(view))
                .contains("rain on the west wall")
                .contains("\u2212 Mon 13 Apr")
                .contains("h shut");
        assertThat(headings()).anyMatch(heading -> heading.matches("\\d+ published visits? breaks?"));
        test(find(Button.class).withText("Plan again").single()).click();

        assertThat(runs.underWay(folder) || runs.state(folder).isPresent()).isTrue();
        assertThat(UI.getCurrent().getInternals().getActiveViewLocation().getPath())
                .isEqualTo(WeekSheetView.PATH);
        runs.stop(folder);
        noFileAnyMore(who);
    }

    @Test
    void the_week_sheet_says_by_which_forecast_it_was_planned_and_that_another_has_come() {
        Person who = people.scheduler();
        noFileAnyMore(who);
        people.signIn(who);
        var before = navigate(WeekSheetView.class);
        assertThat(text(before))
                .contains("Planned with the job folder\u2019s own forecast: Quay Nine.")
                .contains("No forecast: Mill Row. All hours there were counted as open.")
                .doesNotContain("Another forecast has come since");
    }

    @Test
    void another_forecast_is_told_on_the_week_sheet_with_a_way_to_what_it_changes() {
        Person who = people.scheduler();
        aWetFileComes(who);
        people.signIn(who);
        var view = navigate(WeekSheetView.class);

        assertThat(text(view)).contains("Another forecast has come since. Quay Nine: Forecast file brought in");
        assertThat(find(RouterLink.class).withText("See what it changes").all())
                .extracting(RouterLink::getHref)
                .contains("forecast-change?site=Q");
        noFileAnyMore(who);
    }

    @Test
    void a_site_with_one_forecast_or_none_says_so() {
        Person who = people.scheduler();
        noFileAnyMore(who);
        people.signIn(who);

        UI.getCurrent().navigate(ForecastChangeView.class, QueryParameters.of("site", "M"));

        assertThat(text(find(ForecastChangeView.class).single()))
                .contains("No forecast of Mill Row is known: all of its hours count as open.");
    }

    @Test
    void who_sees_another_site_alone_is_told_nothing_of_this_one() {
        aWetFileComes(people.scheduler());
        people.signIn(people.add(Role.SCHEDULER, Reach.of(List.of(new SiteId("M"))), null));

        var view = navigate(ForecastChangeView.class);

        assertThat(text(view)).doesNotContain("Quay Nine").contains("Mill Row");
        noFileAnyMore(people.scheduler());
    }

    private List<String> headings() {
        return find(H2.class).all().stream().map(H2::getText).toList();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }
}
