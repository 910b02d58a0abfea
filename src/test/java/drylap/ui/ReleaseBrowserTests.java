package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static drylap.persistence.jooq.Tables.HANDOFF_ENTRY;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.progress.MarkRequest;
import drylap.progress.StepLog;
import drylap.progress.WallOfAll;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A window crew finishes its course and releases it on the page of the steps. */
@PageTest
class ReleaseBrowserTests {
    private static final OpeningId FIRST = new OpeningId("MS1-01");
    private static final OpeningId SECOND = new OpeningId("MS1-02");
    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

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
    private DSLContext db;

    private final JobFolder job = new QuayFolder().folder();
    private FolderId folder = new FolderId(0);
    private Person crew = WallOfAll.WINDOW;

    @BeforeEach
    void publish() {
        folder = folders.save("quay", job);
        var plan = Planner.standard().plan(job, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        publications.publish(people.scheduler(), folder, plans.save(folder, plan), null);
        crew = people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1");
    }

    @Test
    void the_last_step_makes_the_opening_releasable_and_the_course_goes_with_one_tap() {
        mark(FIRST, 1);
        Page page = show(FIRST);
        Locator offer = page.locator("release-offer");
        assertThat(offer).containsText("still to do");
        assertThat(offer.locator("button")).hasCount(0);

        page.locator(".mark-it").click();
        assertThat(offer).containsText("The whole course is not ready");
        assertThat(offer).containsText(SECOND + ": still to do");
        assertThat(offer.locator("button")).hasText("Release MS1-01");
        assertThat(Axe.trouble(page)).isEmpty();

        page.context().setOffline(true);
        page.evaluate("dispatchEvent(new Event('online'))");
        assertThat(offer).containsText("needs the connection");
        assertThat(offer.locator("button")).hasCount(0);
        mark(SECOND, 0);
        page.context().setOffline(false);

        Locator course = offer.locator("button").last();
        assertThat(course).hasText("Release the course: MS1-01, MS1-02");
        assertThat(Axe.sideways(page)).isEqualTo(0);
        course.click();

        assertThat(page.locator("step-marker")).containsText("Released to the trade that follows");
        assertThat(offer).hasCount(0);
        assertThat(db.fetchCount(HANDOFF_ENTRY, HANDOFF_ENTRY.FOLDER_ID.eq(folder.value())))
                .isEqualTo(2);
        page.close();
    }

    private Page show(OpeningId opening) {
        Page page = chromium.page(360, 760, ColorScheme.DARK);
        SignInPage.at(port).session(page, crew);
        page.navigate("http://localhost:%d/crew/steps.html#%d/%s".formatted(port, folder.value(), opening));
        assertThat(page.locator("step-marker h1")).hasText(opening.value());
        return page;
    }

    /** All of the window crew's own but the last ones. */
    private void mark(OpeningId opening, int but) {
        List<WorkLine> own = job.openings().stream()
                .filter(one -> one.id().equals(opening))
                .flatMap(one -> one.workList().lines().stream())
                .filter(line -> line.number().isPresent() && !line.release())
                .toList();
        for (var line : own.subList(0, own.size() - but))
            log.mark(
                    crew,
                    MarkRequest.done(
                            UUID.randomUUID(), folder, opening, line.code(), Instant.parse("2026-04-13T19:00:00Z")));
    }
}
