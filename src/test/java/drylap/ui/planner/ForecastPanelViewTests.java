package drylap.ui.planner;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.select.SelectTester;
import com.vaadin.flow.component.textfield.TextField;
import drylap.forecasts.BothTellings;
import drylap.forecasts.FetchOutcome;
import drylap.forecasts.FetchState;
import drylap.forecasts.ForecastChoice;
import drylap.forecasts.ForecastChoices;
import drylap.forecasts.ForecastFetches;
import drylap.forecasts.ForecastSource;
import drylap.forecasts.Payload;
import drylap.forecasts.fetching.LocalSource;
import drylap.kernel.FolderId;
import drylap.kernel.Rule;
import drylap.kernel.SiteId;
import drylap.planning.CurrentFolders;
import drylap.planning.JobFolders;
import drylap.security.Person;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import drylap.ui.shell.Desk;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** The sources of this application are played on this machine. */
@ViewTest
class ForecastPanelViewTests extends SpringBrowserlessTest {
    private static final SiteId QUAY = new SiteId("Q");
    private static final LocalSource SERVER = server();

    @Autowired
    private JobFolders folders;

    @Autowired
    private CurrentFolders current;

    @Autowired
    private ForecastChoices choices;

    @Autowired
    private ForecastFetches fetches;

    @Autowired
    private TestPeople people;

    @Autowired
    private ObjectProvider<Desk> desks;

    private FolderId folder = new FolderId(0);

    private static LocalSource server() {
        try {
            return new LocalSource();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @DynamicPropertySource
    static void sources(DynamicPropertyRegistry registry) {
        registry.add("drylap.forecasts.open-meteo", SERVER::base);
        registry.add("drylap.forecasts.met-norway", SERVER::base);
        registry.add("drylap.forecasts.us-weather-service", SERVER::base);
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    @BeforeEach
    void a_scheduler_looks_at_a_folder() {
        people.signIn(people.scheduler());
        folder = folders.save("quay", new QuayFolder().folder());
    }

    @AfterEach
    void the_scheduler_leaves() {
        Person anybody = people.scheduler();
        ForecastChoice now = choices.of(anybody, QUAY);
        choices.choose(anybody, new ForecastChoice(QUAY, null, null, 2, now.version(), "", null));
    }

    /** Six hours of tomorrow, in the place of the quay. */
    private String tomorrow() {
        var place = new QuayFolder().folder().sites().getFirst().place();
        return Payload.of(ForecastSource.OPEN_METEO)
                .change("2026-11-25", LocalDate.now(ZoneOffset.UTC).plusDays(1).toString())
                .change("\"latitude\": 47.6,", "\"latitude\": %s,".formatted(place.latitude()))
                .change("\"longitude\": -122.33,", "\"longitude\": %s,".formatted(place.longitude()))
                .text();
    }

    @Test
    void a_source_is_chosen_fetched_and_planned_by() {
        SERVER.answers(200, tomorrow());
        var view = navigate(SitesView.class);
        assertThat(text(view)).contains("the job folder's own");
        choose("Open-Meteo, hourly");
        assertThat(text(view)).contains("Not fetched yet");

        click("Fetch now the forecast of Quay Nine");
        waitFor(FetchOutcome.FETCHED);

        comes(view, "Planned by: Open-Meteo, hourly, no time of issue told, fetched");
        assertThat(text(view)).contains("Last fetch").contains("fetched (5 hours). Next one due");
        assertThat(text(navigate(OpenHoursView.class))).contains("Planned by: Open-Meteo, hourly");
        assertThat(current.load(folder).forecasts().getFirst().hours()).hasSize(5);
    }

    @Test
    void a_source_that_wants_to_be_left_alone_cannot_be_hurried() {
        SERVER.answers(429, "", "Retry-After", "7200");
        var view = navigate(SitesView.class);
        choose("MET Norway, Locationforecast");
        click("Fetch now the forecast of Quay Nine");
        waitFor(FetchOutcome.UNANSWERED);

        comes(view, "no answer (127.0.0.1 is asked too often (429)). The source asked not to be asked before");
        assertThat(button("Fetch now the forecast of Quay Nine").isEnabled()).isFalse();
    }

    @Test
    void how_rain_lasts_is_shown_and_counted_with_once_it_is_taken_over() {
        var quay = new QuayFolder().folder().sites().getFirst();
        var from = LocalDate.now(ZoneOffset.UTC).plusDays(1).atStartOfDay().toInstant(ZoneOffset.UTC);
        SERVER.answers(200, BothTellings.of(quay, from, 160, 0.72));
        var view = navigate(SitesView.class);
        assertThat(text(view)).contains("How rain lasts here is not known (no forecast of the last 30 days is kept");
        choose("MET Norway, Locationforecast");
        click("Fetch now the forecast of Quay Nine");
        waitFor(FetchOutcome.FETCHED);
        comes(view, "Rain lasts here: one hour's rain goes with the next by 0.72 ±");
        assertThat(text(view)).contains("the plan counts with 0.6.");
        assertThat(counted()).isEqualTo(0.6);

        click("Count with rain that lasts by 0.72 at Quay Nine from the next plan on");

        assertThat(counted()).isEqualTo(0.72);
        assertThat(text(view)).contains("the plan counts with 0.72.");
        assertThat(find(Button.class).all())
                .extracting(button -> button.getAriaLabel().orElse(""))
                .noneMatch(label -> label.startsWith("Count with rain"));
    }

    private double counted() {
        return current.load(folder).rules().at(QUAY).value(Rule.RAIN_PERSISTENCE);
    }

    @Test
    void a_cell_that_is_none_is_not_saved_and_says_what_is_accepted() {
        navigate(SitesView.class);
        click("Choose the source of the forecast of Quay Nine");
        select("US National Weather Service, gridpoint");
        find(TextField.class).all().stream()
                .filter(field -> "Grid cell".equals(field.getLabel()))
                .findFirst()
                .orElseThrow()
                .setValue("over there");
        press("Save");

        assertThat(text(find(Dialog.class).single())).contains("'over there' is no grid cell");
        assertThat(choices.of(people.scheduler(), QUAY).source()).isNull();
    }

    private static final String HEADER =
            "hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity\n";

    private ForecastFileDialog fileDialog() {
        click("Bring in a file of the forecast of Quay Nine");
        return find(ForecastFileDialog.class).single();
    }

    @Test
    void a_file_is_shown_first_and_planned_by_once_it_is_used() {
        var view = navigate(SitesView.class);
        var dialog = fileDialog();
        String hour = LocalDate.now(ZoneOffset.UTC).plusDays(1) + "T12:00Z";

        dialog.read("mine.csv", (HEADER + hour + ",1.2,0.9,5,8,200,9,80\n").getBytes(UTF_8));
        assertThat(text(dialog))
                .contains("mine.csv can be used: 1 hour,")
                .contains("1.2 mm")
                .contains("8.0 m/s");
        assertThat(choices.of(people.scheduler(), QUAY).source()).isNull();
        press("Use this forecast");

        assertThat(text(view)).contains("Planned by: Forecast file brought in, no time of issue told, on");
        assertThat(current.load(folder).forecasts().getFirst().hours()).hasSize(1);
        assertThat(find(Button.class).all())
                .extracting(button -> button.getAriaLabel().orElse(""))
                .doesNotContain("Fetch now the forecast of Quay Nine");
    }

    @Test
    void a_file_with_a_mistake_is_refused_whole_with_its_line_and_column() {
        navigate(SitesView.class);
        var dialog = fileDialog();

        dialog.read(
                "mine.csv",
                (HEADER + "2026-04-13T07:00-07:00,wet,0.9,5,8,200,9,80\n2026-04-13T08:00-07:00,1,0.9,5,8,400,9,80\n")
                        .getBytes(UTF_8));

        assertThat(text(dialog))
                .contains("mine.csv cannot be used: 2 problems. Nothing was changed.")
                .contains("rain_mm", "is no number (wet)", "a number with a point, or a blank")
                .contains("wind_from_deg", "is too large (400)");
        assertThat(find(Button.class)
                        .from(dialog)
                        .withText("Use this forecast")
                        .single()
                        .isEnabled())
                .isFalse();
        assertThat(current.load(folder).forecasts().getFirst().origin()).isNull();
    }

    private void choose(String source) {
        click("Choose the source of the forecast of Quay Nine");
        select(source);
        press("Save");
    }

    private void select(String source) {
        Select<?> select = find(Select.class).all().stream()
                .filter(one -> "Source".equals(one.getLabel()))
                .findFirst()
                .orElseThrow();
        test(SelectTester.class, select).selectItem(source);
    }

    private void waitFor(FetchOutcome outcome) {
        Person anybody = people.scheduler();
        await().untilAsserted(() ->
                assertThat(fetches.of(anybody, QUAY).map(FetchState::outcome)).contains(outcome));
    }

    /** News are not heard without a browser, so the table is laid anew. */
    private void comes(Component view, String text) {
        desks.getObject().refresh();
        assertThat(text(view)).contains(text);
    }

    private Button button(String label) {
        return find(Button.class).withAriaLabel(label).single();
    }

    private void click(String label) {
        test(button(label)).click();
    }

    private void press(String text) {
        test(find(Button.class).from(find(Dialog.class).single()).withText(text).single())
                .click();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }
}
