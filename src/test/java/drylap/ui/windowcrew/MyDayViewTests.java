package drylap.ui.windowcrew;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.RouterLink;
import drylap.kernel.CrewId;
import drylap.kernel.FolderId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.speech.SpanishWords;
import drylap.ui.QuayFolder;
import drylap.ui.planner.ViewTest;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.ResponseEntity;
import org.springframework.mock.web.MockHttpServletRequest;

/** Two crews and a visit of each today, at two sites. */
@ViewTest
class MyDayViewTests extends SpringBrowserlessTest {
    private static final ZoneId ZONE = ZoneId.of("America/Los_Angeles");

    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private Clock clock;

    @Autowired
    private CrewDayPaperController papers;

    private final JobFolder job = new QuayFolder().told().folder();
    private FolderId folder = new FolderId(0);

    @BeforeEach
    void publish_a_plan() {
        folder = folders.save("quay", job);
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZONE);
        var visits = List.of(
                visit("W1", today, 1, "QW2-01", Task.INSTALL),
                visit("W1", today, 2, "MS1-01", Task.INSTALL),
                visit("C1", today, 1, "QW1-02", Task.CLAD));
        Instant noon = visits.getFirst().start();
        var plan = new Plan(
                noon,
                noon.plus(Duration.ofDays(2)),
                visits,
                List.of(),
                List.of(),
                List.of(),
                new Ledger(List.of(), 0, 0, 0));
        publications.publishSample(folder, plans.save(folder, plan));
    }

    private Visit visit(String crew, LocalDate date, int sequence, String opening, Task task) {
        var at = job.openings().stream()
                .filter(one -> one.id().value().equals(opening))
                .findFirst()
                .orElseThrow();
        var start = date.atTime(10 + 2 * sequence, 0).atZone(ZONE).toInstant();
        return new Visit(
                new CrewId(crew),
                date,
                sequence,
                at.facade(),
                at.level(),
                at.id(),
                task,
                start,
                start.plusSeconds(3600));
    }

    private static String open() {
        UI.getCurrent().navigate(MyDayView.class);
        var view = UI.getCurrent().getInternals().getActiveRouterTargetsChain().getFirst();
        return view.getElement().getOuterHTML();
    }

    @Test
    void a_window_crew_sees_its_own_day_and_each_stop_leads_to_its_steps() {
        people.signIn(people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"));

        assertThat(open())
                .contains("QW2-01", "MS1-01", "#%d/QW2-01".formatted(folder.value()))
                .contains("1 Invented Quay, Sample Harbour")
                .doesNotContain("QW1-02");
        assertThat($(Select.class).all()).noneMatch(select -> select.isVisible() && "Crew".equals(select.getLabel()));
    }

    @Test
    void a_crew_that_works_at_one_site_sees_nothing_of_the_other() {
        people.signIn(people.add(Role.WINDOW_CREW, Reach.of(List.of(new SiteId("M"))), "W1"));

        assertThat(open()).contains("MS1-01").doesNotContain("QW2-01", "Invented Quay");
    }

    /**
     * Both openings are 900 by 1200 mm: 4 fasteners along each side; beads 2 x 1200 + 900 and 2 x 1200 over the jamb flanges at
     * QW2-01 (A, drained), 2 x 1200 + 2 x 900 at MS1-01 (B1, barrier), 9.9 m or 705 ml and 5 % of waste; aprons of 900 + 2 x 228.6.
     */
    @Test
    void a_window_crew_sees_what_to_load_for_the_day() {
        people.signIn(people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"));

        assertThat(open())
                .contains("Load for this day: 2 windows, 32 fasteners, 3 cartridges of sealant, 2 pan corners")
                .contains("apron strip 2.71 m", "flashing strip 229 mm (9 in) wide, from rolls of 22.9 m: 1;")
                .contains("2 × head flashing 1408 mm (55 7/16 in) for ")
                .contains("the window maker's instructions come first");
    }

    @Test
    void the_day_on_paper_is_its_crews_and_of_the_sites_in_their_reach() throws IOException {
        people.signIn(people.add(Role.WINDOW_CREW, Reach.of(List.of(new SiteId("M"))), "W1"));
        assertThat(open()).contains("/papers/crew-day.pdf?crew=W1&amp;date=");

        assertThat(text(paper("W1"))).contains("MS1-01", "Hold points").doesNotContain("QW2-01", "Invented Quay");
        assertThat(paper("C1").getStatusCode().value()).isEqualTo(404);
    }

    @Test
    void a_scheduler_prints_any_crew_and_who_has_no_such_day_prints_none() throws IOException {
        people.signIn(people.scheduler());
        assertThat(text(paper("W1")))
                .contains("QW2-01", "MS1-01", "Load for this day", "2 windows, 32 fasteners")
                .contains("crew W1, 3 people", "1 Invented Quay\nSample Harbour\nSite Q");
        assertThat(text(paper("C1"))).contains("QW1-02").doesNotContain("QW2-01");
        assertThat(paper("nobody").getStatusCode().value()).isEqualTo(404);

        people.signIn(people.add(Role.FOLLOW_ON, Reach.EVERYWHERE, "W1"));
        assertThat(paper("W1").getStatusCode().value()).isEqualTo(404);
        people.signIn(people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null));
        assertThat(paper("W1").getStatusCode().value()).isEqualTo(404);
        TestPeople.signOut();
        assertThat(paper("W1").getStatusCode().value()).isEqualTo(404);
    }

    /** Papers are given to others: whoever prints one says in which language. */
    @Test
    void the_day_on_paper_is_in_spanish_where_that_is_asked_for() throws IOException {
        people.signIn(people.scheduler());
        String paper = text(paper("W1", "es")) + text(paper("C1", "es"));
        assertThat(paper).contains("cuadrilla W1", "Carga para este día", "trabajo en altura", "persona competente");
        assertThat(new SpanishWords(List.of(
                                "Quay Nine Mill Row west south Los Angeles America QW MS Invented Sample Harbour"))
                        .strange(paper))
                .isEmpty();
        assertThat(text(paper("W1", "xx"))).contains("Load for this day");
    }

    private ResponseEntity<byte[]> paper(String crew) {
        return paper(crew, null);
    }

    private ResponseEntity<byte[]> paper(String crew, @Nullable String language) {
        var today = LocalDate.ofInstant(clock.instant(), ZONE).toString();
        return papers.day(crew, today, "a4", language, new MockHttpServletRequest("GET", "/papers/crew-day.pdf"));
    }

    private static String text(ResponseEntity<byte[]> answer) throws IOException {
        try (var document = Loader.loadPDF(Objects.requireNonNull(answer.getBody()))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void a_crew_without_installs_has_nothing_to_load() {
        people.signIn(people.add(Role.TESTER, Reach.EVERYWHERE, "C1"));

        assertThat(open()).contains("QW1-02").doesNotContain("Load for this day");
    }

    @Test
    void a_scheduler_may_look_at_any_crew() {
        people.signIn(people.scheduler());

        open();

        assertThat($(Select.class).all()).anyMatch(select -> select.isVisible() && "Crew".equals(select.getLabel()));
    }

    @Test
    void the_rain_call_is_one_tap_away_for_a_window_crew() {
        people.signIn(people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"));

        open();

        assertThat(ways()).contains("rain-call");
    }

    @Test
    void a_tester_is_not_sent_to_a_rain_call() {
        people.signIn(people.add(Role.TESTER, Reach.EVERYWHERE, "W1"));

        open();

        assertThat(ways()).doesNotContain("rain-call");
    }

    private List<String> ways() {
        return $(RouterLink.class).all().stream()
                .filter(RouterLink::isVisible)
                .map(RouterLink::getHref)
                .toList();
    }

    @Test
    void a_person_without_a_crew_of_the_folder_is_told_so() {
        people.signIn(people.add(Role.TESTER, Reach.EVERYWHERE, "nobody"));

        assertThat(open()).contains("in no crew").doesNotContain("QW2-01");
    }
}
