package drylap.ui.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadTester;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.papers.ReadPaper;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.QuayFolder;
import drylap.ui.components.FacadeDrawing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.ResponseEntity;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.util.LinkedMultiValueMap;

@ViewTest
class PlannerViewTests extends SpringBrowserlessTest {
    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private TestPeople people;

    @Autowired
    private WeekPaperController weekPapers;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_scheduler_is_signed_in() {
        people.signIn(people.scheduler());
    }

    @BeforeEach
    void a_planned_folder_lies_on_the_table() {
        var quay = new QuayFolder().folder();
        folder = folders.save("quay", quay);
        plans.save(folder, Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false));
    }

    @Test
    void the_ways_between_the_screens_have_the_trades_names() {
        navigate(WeekSheetView.class);
        assertThat(find(RouterLink.class).from(find(Nav.class).single()).all())
                .extracting(RouterLink::getText)
                .containsExactly(
                        "Week sheet",
                        "Odds",
                        "Walls",
                        "Sites",
                        "Take-off",
                        "Open hours",
                        "Forecast change",
                        "Season",
                        "What if",
                        "Job folders",
                        "Crews",
                        "Rules",
                        "My day",
                        "Rain call",
                        "Aprons",
                        "Hand-over records",
                        "Start",
                        "History");
    }

    @Test
    void every_screen_says_that_a_dry_hour_does_not_make_height_safe() {
        for (Class<? extends Component> screen :
                java.util.List.of(WeekSheetView.class, WallsView.class, OpenHoursView.class, JobFoldersView.class)) {
            navigate(screen);
            assertThat(text(find(Paragraph.class).withClassName("caution").single()))
                    .contains("never a statement that work at height is safe")
                    .contains("competent person on site decides");
        }
    }

    @Test
    void the_week_sheet_shows_what_is_left_out_and_what_the_plan_costs() {
        var view = navigate(WeekSheetView.class);
        assertThat(headings()).contains("Not planned", "Ledger");
        assertThat(text(view)).contains("Crew-days").contains("days on which a crew comes out");
    }

    @Test
    void the_walls_open_at_the_opening_that_stands_open() {
        var view = navigate(WallsView.class);
        assertThat(headings()).contains("Laps of QW1-01");
        assertThat(text(view)).contains("open to rain").contains("sealant on outer jamb flanges");
    }

    @Test
    void the_sites_show_each_facade_drawn_with_what_stands_open_and_lead_to_its_wall() {
        var view = navigate(SitesView.class);
        assertThat(headings()).containsExactly("Quay Nine", "Mill Row");
        assertThat(text(view))
                .contains("1 open to rain now, apron ready at 1 of 3, 0 released, 0 returned, 0 finished")
                .contains("no forecast from now on");
        assertThat(find(FacadeDrawing.class).all()).hasSize(2);
        assertThat(find(RouterLink.class).from(view).all())
                .extracting(RouterLink::getHref)
                .contains("walls?opening=QW1-01");
    }

    @Test
    void an_address_leads_to_one_opening() {
        UI.getCurrent().navigate(WallsView.class, QueryParameters.of("opening", "MS1-02"));
        assertThat(headings()).contains("Laps of MS1-02");
        assertThat(find(FacadeDrawing.class).single().getElement().getProperty("chosen"))
                .isEqualTo("MS1-02");
    }

    @Test
    void open_hours_are_shown_for_each_facade_of_each_site() {
        var view = navigate(OpenHoursView.class);
        assertThat(headings()).contains("Quay Nine", "Mill Row");
        assertThat(text(view)).contains("faces west, 262°").contains("faces south, 180°");
        assertThat(text(view))
                .contains("For ranking walls and hours, not a promise of litres")
                .contains("Taken: terrain II")
                .contains("Driving rain on the walls of Quay Nine");
    }

    @Test
    void a_sound_folder_is_taken_in_laid_on_the_table_and_planned() {
        navigate(JobFoldersView.class);
        upload("pier week.zip", new QuayFolder());
        assertThat(headings()).contains("pier week.zip was taken in");
        assertThat(folders.list().getFirst().name()).isEqualTo("pier week");
        test(find(Button.class).withAriaLabel("Lay on the table: pier week").single())
                .click();
        assertThat(getCurrentView()).isInstanceOf(WeekSheetView.class);
    }

    @Test
    void a_folder_with_faults_is_refused_with_all_of_them_and_nothing_changes() {
        int before = folders.list().size();
        var view = navigate(JobFoldersView.class);
        upload(
                "bad.zip",
                new QuayFolder()
                        .with("openings.csv", "QW1-02,1200", "QW1-02,wide")
                        .with("crews.csv", "C1,siding", "C1,roofing"));
        assertThat(headings()).contains("bad.zip was not taken in");
        assertThat(text(view))
                .contains("nothing was changed")
                .contains("width_mm")
                .contains("roofing");
        assertThat(folders.list()).hasSize(before);
    }

    private void upload(String name, QuayFolder folder) {
        test(UploadTester.class, find(Upload.class).single()).upload(name, "application/zip", folder.zip());
    }

    private java.util.List<String> headings() {
        return find(H2.class).all().stream().map(H2::getText).toList();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    @Test
    void the_week_is_to_be_had_on_a_large_paper_as_far_as_it_is_looked_at() throws Exception {
        navigate(WeekSheetView.class);
        var address = find(Anchor.class).all().stream()
                .map(Anchor::getHref)
                .filter(href -> href.startsWith("/papers/week.pdf") && href.endsWith("&paper=tabloid"))
                .findFirst()
                .orElseThrow();
        assertThat(address).contains("folder=%d&".formatted(folder.value()));

        String text = ReadPaper.flat(
                ReadPaper.text(Objects.requireNonNull(week("a3", Map.of()).getBody())));
        assertThat(text)
                .contains(
                        "PROPOSAL that is not published",
                        "wrap crew",
                        "Quay Nine",
                        "QW1-02",
                        "never a statement that work at height is safe");
        assertThat(ReadPaper.codes(
                        Objects.requireNonNull(week("tabloid", Map.of()).getBody())))
                .containsExactly("http://localhost/week-sheet");
        assertThat(ReadPaper.text(
                        Objects.requireNonNull(week("a3", Map.of("crew", "W1")).getBody())))
                .contains("crew W1 only")
                .doesNotContain("wrap crew");
    }

    @Test
    void the_week_on_paper_is_only_for_those_who_may_look_at_it() {
        assertThat(week("a4", Map.of()).getStatusCode().value()).isEqualTo(404);
        people.signIn(people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"));
        assertThat(week("a3", Map.of()).getStatusCode().value()).isEqualTo(404);
        people.signIn(people.add(Role.SCHEDULER, Reach.of(Set.of(new SiteId("M"))), null));
        assertThat(text(week("a3", Map.of()))).contains("Mill Row").doesNotContain("Quay Nine", "QW1-02");
        TestPeople.signOut();
        assertThat(week("a3", Map.of()).getStatusCode().value()).isEqualTo(404);
    }

    private static String text(ResponseEntity<byte[]> answer) {
        try {
            return ReadPaper.text(Objects.requireNonNull(answer.getBody()));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private ResponseEntity<byte[]> week(String paper, Map<String, String> choice) {
        var all = new LinkedMultiValueMap<String, String>();
        choice.forEach(all::add);
        return weekPapers.week(folder.value(), false, paper, null, all, new MockHttpServletRequest());
    }
}
