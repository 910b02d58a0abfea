package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static drylap.persistence.jooq.Tables.PHOTO;
import static drylap.persistence.jooq.Tables.STEP_MARK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.progress.MarkRequest;
import drylap.progress.StepLog;
import drylap.progress.WallOfAll;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A phone that loses its connection, with a real service worker, a real database of the browser and the real server. */
@PageTest
class OfflineBrowserTests {
    private static final List<String> OPENINGS = List.of("QW2-01", "MS1-01", "MS1-02", "QW1-02");
    private static final int MARKS = 30;
    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @Autowired
    private StepLog log;

    @Autowired
    private DSLContext db;

    private final JobFolder job = new QuayFolder()
            .with("openings.csv", "9,2026-04-10T15:30-07:00", ",")
            .folder();
    private FolderId folder = new FolderId(0);
    private Person crew = WallOfAll.WINDOW;

    /** What was tapped, as the screen named it. */
    private record Marked(String opening, String text) {}

    @BeforeEach
    void take_the_folder_in() {
        folder = folders.save("quay", job);
        crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");
    }

    @Test
    void thirty_marks_without_a_connection_and_a_reload_between_are_in_the_log_once_each_in_order() {
        Page page = phone();
        for (String opening : OPENINGS) show(page, opening);
        List<Marked> made = new ArrayList<>();

        page.context().setOffline(true);
        for (String opening : OPENINGS) {
            show(page, opening);
            while (made.size() < MARKS && page.locator(".mark-it").isEnabled()) {
                made.add(mark(page, opening));
                assertThat(page.locator(".count b")).hasText(String.valueOf(made.size()));
                if (made.size() % 7 == 0) page.reload();
            }
        }
        assertThat(made).hasSize(MARKS);
        page.reload();
        assertThat(page.locator(".count b")).hasText(String.valueOf(MARKS));
        assertThat(page.locator(".wait")).containsText("No connection");
        assertThat(inTheLog()).isEmpty();

        page.context().setOffline(false);
        assertArrived(page, made);

        page.reload();
        assertThat(page.locator("li.done").first()).isVisible();
        assertThat(inTheLog()).hasSize(MARKS);
        page.close();
    }

    @Test
    void a_photo_taken_without_a_connection_goes_with_the_next_mark() {
        Page page = phone();
        show(page, "MS1-01");
        page.context().setOffline(true);
        page.locator("input[type=file]").setInputFiles(new FilePayload("wall.png", "image/png", onePixel()));
        assertThat(page.locator(".count b")).hasText("1");
        mark(page, "MS1-01");
        assertThat(page.locator(".count b")).hasText("2");
        page.reload();
        page.context().setOffline(false);
        await().untilAsserted(() -> assertThat(inTheLog()).hasSize(1));
        assertThat(page.locator(".count")).hasCount(0);

        var photo =
                db.selectFrom(PHOTO).where(PHOTO.FOLDER_ID.eq(folder.value())).fetchSingle();
        assertThat(photo.getMediaType()).isEqualTo("image/jpeg");
        assertThat(db.selectFrom(STEP_MARK)
                        .where(STEP_MARK.FOLDER_ID.eq(folder.value()))
                        .fetchSingle()
                        .getPhotos())
                .containsExactly(photo.getId());
        page.close();
    }

    @Test
    void a_mark_that_another_person_made_impossible_is_shown_with_its_lap_until_it_is_read() {
        Page page = phone();
        show(page, "MS1-01");
        var lines = lines("MS1-01");
        List<Marked> made = new ArrayList<>();
        for (int i = 0; i < 3; i++) made.add(mark(page, "MS1-01"));
        assertArrived(page, made);
        page.context().setOffline(true);
        Marked late = mark(page, "MS1-01");
        var undo = lines.get(2);
        log.mark(
                crew,
                MarkRequest.undone(
                        UUID.randomUUID(),
                        folder,
                        new OpeningId("MS1-01"),
                        undo.code(),
                        Instant.parse("2026-04-13T19:00:00Z"),
                        "bent"));
        page.context().setOffline(false);

        Locator refused = page.locator(".refused");
        assertThat(refused).containsText(late.text());
        assertThat(refused).containsText(undo.text());
        page.reload();
        assertThat(refused).isVisible();
        assertThat(Axe.trouble(page)).isEmpty();
        refused.locator("button").click();
        assertThat(refused).hasCount(0);
        page.reload();
        assertThat(page.locator(".mark-it")).isVisible();
        assertThat(refused).hasCount(0);
        page.close();
    }

    @Test
    void whose_session_is_over_is_asked_to_sign_in_and_loses_nothing() {
        Page page = phone();
        show(page, "MS1-01");
        page.context().setOffline(true);
        Marked made = mark(page, "MS1-01");
        page.context().clearCookies();
        page.context().setOffline(false);
        assertThat(page.locator(".wait")).containsText("Sign in again");
        page.locator(".wait a").click();
        page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill(crew.signInName());
        page.getByLabel("Password", new Page.GetByLabelOptions().setExact(true)).fill(TestPeople.PASSWORD);
        page.locator("button[type=submit]").click();
        assertThat(page.locator("steps-page h1")).hasText("Openings");
        assertArrived(page, List.of(made));
        page.close();
    }

    @Test
    void the_screen_fits_a_phone_and_can_be_read_by_everybody() {
        for (var scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            Page page = chromium.page(360, 760, scheme);
            SignInPage.at(port).enter(page, crew);
            show(page, "QW2-01");
            assertThat(page.locator(".drawing svg").first()).isVisible();
            assertThat(Axe.sideways(page)).isNotPositive();
            assertThat(Axe.trouble(page)).isEmpty();
            page.close();
        }
    }

    private Page phone() {
        Page page = chromium.page(360, 760, ColorScheme.LIGHT);
        SignInPage.at(port).enter(page, crew);
        show(page, OPENINGS.getFirst());
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
        return page;
    }

    private void show(Page page, String opening) {
        String hash = "#%d/%s".formatted(folder.value(), opening);
        if (page.url().contains("/crew/")) page.evaluate("hash => { location.hash = hash }", hash);
        else page.navigate("http://localhost:%d/crew/steps.html%s".formatted(port, hash));
        assertThat(page.locator("step-marker h1")).hasText(opening);
    }

    private static Marked mark(Page page, String opening) {
        String text = page.locator(".thumb .step").textContent();
        int before = page.locator("li.done").count();
        page.locator(".mark-it").click();
        assertThat(page.locator("li.done")).hasCount(before + 1);
        return new Marked(opening, text);
    }

    /** The log is asked first: a page that has just opened shows no count before it has read what waits. */
    private void assertArrived(Page page, List<Marked> made) {
        await().untilAsserted(() -> assertThat(inTheLog()).containsExactlyElementsOf(made));
        assertThat(page.locator(".count")).hasCount(0);
    }

    private List<Marked> inTheLog() {
        return db.selectFrom(STEP_MARK)
                .where(STEP_MARK.FOLDER_ID.eq(folder.value()))
                .orderBy(STEP_MARK.ID)
                .fetch(row -> new Marked(row.getOpening(), text(row.getOpening(), row.getLine())));
    }

    private String text(String opening, String code) {
        return lines(opening).stream()
                .filter(line -> line.code().equals(code))
                .findFirst()
                .orElseThrow()
                .text();
    }

    private List<WorkLine> lines(String opening) {
        return job.openings().stream()
                .filter(one -> one.id().value().equals(opening))
                .findFirst()
                .orElseThrow()
                .workList()
                .lines();
    }

    private static byte[] onePixel() {
        return Base64.getDecoder()
                .decode(
                        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");
    }
}
