package drylap.ui.followon;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.router.QueryParameters;
import drylap.handoff.Bookings;
import drylap.handoff.Custodies;
import drylap.handoff.Custody;
import drylap.handoff.HandoffRecords;
import drylap.handoff.HandoffRequest;
import drylap.handoff.Releases;
import drylap.handoff.Takeovers;
import drylap.kernel.Course;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.papers.ReadPaper;
import drylap.pictures.SamplePictures;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.progress.OpeningStates;
import drylap.progress.PhotoRequest;
import drylap.progress.Photos;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.speech.SpanishWords;
import drylap.ui.QuayFolder;
import drylap.ui.drawn.Aprons.Seen;
import drylap.ui.planner.ViewTest;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.ResponseEntity;
import org.springframework.mock.web.MockHttpServletRequest;

@ViewTest
class FollowOnViewTests extends SpringBrowserlessTest {
    private static final OpeningId DONE = new OpeningId("QW1-02");

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    @Autowired
    private OpeningStates states;

    @Autowired
    private Releases releases;

    @Autowired
    private Takeovers takeovers;

    @Autowired
    private Custodies custodies;

    @Autowired
    private Bookings bookings;

    @Autowired
    private TestPeople people;

    @Autowired
    private ReleasePaperController papers;

    @Autowired
    private RecordPaperController recordPapers;

    @Autowired
    private HandoffRecords records;

    @Autowired
    private Photos photos;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void a_plan_is_published() {
        var quay = new QuayFolder().told().folder();
        folder = folders.save("quay", quay);
        var plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        publications.publishSample(folder, plans.save(folder, plan));
    }

    @Test
    void the_wrap_crew_accepts_a_released_course_with_one_button() {
        release();
        wrapper("Q");
        navigate(ApronsView.class);
        press("Accept the one released on level 1");
        assertThat(custodies.of(folder, DONE)).isInstanceOf(Custody.Accepted.class);
        assertThat(text(find(Notice.class).single())).contains("QW1-02: accepted");
    }

    @Test
    void someone_who_was_quicker_is_named_and_nothing_is_overwritten() {
        release();
        wrapper("Q");
        var view = navigate(ApronsView.class);
        var other = people.add(Role.FOLLOW_ON, Reach.EVERYWHERE, "P1");
        var seen = new Seen(request(other).seen());
        takeovers.accept(other, request(other));
        // pressed before the news took the button away
        view.accept(seen);
        assertThat(text(find(Notice.class).single()))
                .contains("was accepted by " + other.name())
                .contains("Nothing was overwritten");
        assertThat(((Custody.Accepted) custodies.of(folder, DONE)).by()).isEqualTo(other.name());
    }

    @Test
    void one_tap_marks_a_line_at_the_whole_course_and_names_what_the_laps_refuse() {
        wrapper("Q");
        navigate(ApronsView.class);
        var button = find(Button.class).all().stream()
                .filter(one -> one.getText().startsWith("Done at 2: first barrier below the sill"))
                .findFirst()
                .orElseThrow();
        test(button).click();
        assertThat(text(find(Notice.class).single()))
                .contains("1 marked, 1 not:")
                .contains("QW1-01");
        assertThat(states.of(people.scheduler(), folder, DONE).done()).contains("W1S");
        assertThat(states.of(people.scheduler(), folder, new OpeningId("QW1-01"))
                        .done())
                .doesNotContain("W1S");
    }

    @Test
    void nobody_sees_aprons_of_another_site() {
        wrapper("M");
        UI.getCurrent().navigate(ApronsView.class, QueryParameters.of("opening", "QW1-02"));
        assertThat(text((Component) getCurrentView())).contains("Mill Row").doesNotContain("Quay Nine", "QW1-02");
    }

    @Test
    void the_release_of_a_course_is_to_be_had_on_paper_for_its_own_trades_only() throws IOException {
        release();
        wrapper("Q");
        assertThat(text(paper("Q")))
                .contains("Address: 1 Invented Quay, Sample Harbour")
                .contains(
                        "Release: Quay Nine, ", "apron ready", "drains to: ", "name, signature", "accepted", "returned")
                .contains("A dry hour is never a statement that work at height is safe.");
        assertThat(paper("M").getStatusCode().value()).isEqualTo(404);
        wrapper("M");
        assertThat(paper("Q").getStatusCode().value()).isEqualTo(404);
        people.signIn(people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"));
        assertThat(paper("Q").getStatusCode().value()).isEqualTo(404);
        TestPeople.signOut();
        assertThat(paper("Q").getStatusCode().value()).isEqualTo(404);
    }

    @Test
    void a_record_is_to_be_had_on_paper_with_its_photos_for_its_own_sites_only() throws Exception {
        photos.add(
                people.scheduler(),
                new PhotoRequest(
                        UUID.randomUUID(),
                        folder,
                        DONE,
                        Instant.parse("2026-04-13T19:00:00Z"),
                        SamplePictures.named("orientation-6.jpg")));
        release();
        wrapper("Q");
        long id = records.of(people.scheduler(), folder, 1).getFirst().id();
        navigate(RecordView.class, id);
        assertThat(find(Anchor.class).all())
                .anyMatch(link -> link.getHref().equals("/papers/record.pdf?id=%d&paper=letter".formatted(id)));
        var answer = record(id);
        assertThat(text(answer).replaceAll("\\s+", " "))
                .contains(
                        "Hand-over record " + id,
                        "QW1-02",
                        "Released by",
                        "Address 1 Invented Quay, Sample Harbour",
                        "rough opening accepted",
                        "How the laps go",
                        "(this record)")
                .contains("QW1-02, by ", "A dry hour is never a statement that work at height is safe.");
        assertThat(ReadPaper.codes(Objects.requireNonNull(answer.getBody())))
                .containsExactly("http://localhost/record/" + id);
        wrapper("M");
        assertThat(record(id).getStatusCode().value()).isEqualTo(404);
        assertThat(record(id + 1_000).getStatusCode().value()).isEqualTo(404);
        people.signIn(people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null));
        assertThat(record(id).getStatusCode().value()).isEqualTo(404);
        TestPeople.signOut();
        assertThat(record(id).getStatusCode().value()).isEqualTo(404);
    }

    @Test
    void the_release_on_paper_is_in_spanish_where_that_is_asked_for() throws IOException {
        release();
        wrapper("Q");
        String paper = text(paper("Q", "es"));
        assertThat(paper)
                .contains(
                        "Liberación: Quay Nine",
                        "Dirección: 1 Invented Quay, Sample Harbour",
                        "babero listo",
                        "nombre, firma",
                        "trabajo en altura");
        assertThat(new SpanishWords(List.of("Quay Nine west QW Test window-crew Invented Sample Harbour"))
                        .strange(paper))
                .isEmpty();
    }

    @Test
    void a_record_on_paper_is_in_spanish_where_that_is_asked_for() throws IOException {
        photos.add(
                people.scheduler(),
                new PhotoRequest(
                        UUID.randomUUID(),
                        folder,
                        DONE,
                        Instant.parse("2026-04-13T19:00:00Z"),
                        SamplePictures.named("orientation-6.jpg")));
        release();
        wrapper("Q");
        long id = records.of(people.scheduler(), folder, 1).getFirst().id();
        String paper = text(record(id, "es"));
        assertThat(paper)
                .contains("Acta de entrega " + id, "De mano en mano", "Cómo van los traslapes", "Fotos")
                .contains("trabajo en altura");
        assertThat(new SpanishWords(List.of("Quay Nine west QW Test window-crew scheduler Invented Sample Harbour"))
                        .strange(paper))
                .isEmpty();
    }

    private ResponseEntity<byte[]> record(long id) {
        return record(id, null);
    }

    private ResponseEntity<byte[]> record(long id, @Nullable String language) {
        return recordPapers.record(id, "a4", language, new MockHttpServletRequest());
    }

    private ResponseEntity<byte[]> paper(String site) {
        return paper(site, null);
    }

    private ResponseEntity<byte[]> paper(String site, @Nullable String language) {
        var course = folderOf(site);
        return papers.release(site, course.facade().facade(), course.level(), "letter", language);
    }

    /** The course of the opening that is released, or at the other site the first one. */
    private static Course folderOf(String site) {
        return new QuayFolder()
                .folder().openings().stream()
                        .filter(one -> one.facade().site().value().equals(site))
                        .filter(one -> !site.equals("Q") || one.id().equals(DONE))
                        .findFirst()
                        .orElseThrow()
                        .course();
    }

    private static String text(ResponseEntity<byte[]> answer) throws IOException {
        try (var document = Loader.loadPDF(Objects.requireNonNull(answer.getBody()))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void a_scheduler_looks_and_has_no_button_of_another_trade() {
        release();
        people.signIn(people.scheduler());
        UI.getCurrent().navigate(ApronsView.class, QueryParameters.of("opening", "QW1-02"));
        assertThat(text((Component) getCurrentView())).contains("released by");
        assertThat(find(Button.class).all())
                .extracting(Button::getText)
                .noneMatch(
                        words -> words.startsWith("Accept") || words.startsWith("Return") || words.startsWith("Done"));
    }

    @Test
    void a_crew_day_is_booked_seen_by_the_scheduler_and_taken_back() {
        var who = wrapper("Q");
        navigate(ApronsView.class);
        press("Book the day");
        assertThat(bookings.of(people.scheduler(), folder)).singleElement().satisfies(day -> {
            assertThat(day.site()).isEqualTo(new SiteId("Q"));
            assertThat(day.by()).isEqualTo(who.name());
        });
        var back = find(Button.class).all().stream()
                .filter(one -> one.getText().equals("Take back"))
                .findFirst()
                .orElseThrow();
        test(back).click();
        assertThat(bookings.of(people.scheduler(), folder)).isEmpty();
    }

    @Test
    void the_record_names_who_released_and_who_took_over() {
        var crew = release();
        var other = people.add(Role.FOLLOW_ON, Reach.EVERYWHERE, "P1");
        var act = ((drylap.handoff.HandoffResult.Done) takeovers.accept(other, request(other))).act();
        people.signIn(other);
        UI.getCurrent().navigate(RecordView.class, act.id());
        assertThat(text((Component) getCurrentView()))
                .contains("Accepted: QW1-02", crew.name(), other.name(), "no statement that work at height is safe");
        navigate(RecordsView.class);
        assertThat(find(H2.class).all()).extracting(H2::getText).contains("Hand-over records");
        assertThat(text((Component) getCurrentView())).contains("released: QW1-02", "accepted: QW1-02");
    }

    @Test
    void the_record_of_another_site_is_as_none() {
        release();
        long id = custodyAct();
        wrapper("M");
        UI.getCurrent().navigate(RecordView.class, id);
        assertThat(text((Component) getCurrentView()))
                .contains("none of this number")
                .doesNotContain("QW1-02");
        navigate(RecordsView.class);
        assertThat(text((Component) getCurrentView())).doesNotContain("QW1-02");
    }

    private long custodyAct() {
        return ((Custody.Released) custodies.of(folder, DONE)).act();
    }

    private Person release() {
        var crew = people.add(Role.WINDOW_CREW, Reach.of(Set.of(new SiteId("Q"))), "W1");
        assertThat(releases.release(crew, request(crew)).done()).isTrue();
        return crew;
    }

    private HandoffRequest request(Person who) {
        var seen = Map.of(DONE, states.of(who, folder, DONE).version());
        return new HandoffRequest(UUID.randomUUID(), folder, seen, "", List.of());
    }

    private Person wrapper(String site) {
        return people.signIn(people.add(Role.FOLLOW_ON, Reach.of(Set.of(new SiteId(site))), "P1"));
    }

    private void press(String name) {
        var button = find(Button.class).all().stream()
                .filter(one -> name.equals(one.getAriaLabel().orElse(one.getText())))
                .findFirst()
                .orElseThrow();
        test(button).click();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }
}
