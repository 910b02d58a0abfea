package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import drylap.kernel.FolderId;
import drylap.kernel.Task;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.security.TestPeople;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * On the quay folder's planned week: crew W1 has three blocks on Monday, the last of which is MS1-01 and, from 10:17 to 11:00,
 * MS1-02.
 */
@PageTest
class VisitMoveBrowserTests {
    private static final String MILL = "W1|2026-04-13|2";
    private static final int TABS_AT_MOST = 40;
    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    private FolderId folder = new FolderId(0);
    private Page page;

    @BeforeEach
    void a_scheduler_looks_at_the_week() {
        var quay = new QuayFolder().folder();
        folder = folders.save("quay", quay);
        plans.save(folder, Planner.standard().plan(quay, new PlanRequest(null, null, 0L, 1), _ -> {}, () -> false));
        page = chromium.page(1440, 900, ColorScheme.LIGHT);
        SignInPage.at(port).session(page, people.scheduler());
        page.navigate("http://localhost:%d/week-sheet".formatted(port));
        assertThat(block(MILL)).isVisible();
    }

    @AfterEach
    void leave() {
        page.close();
    }

    @Test
    void a_visit_dragged_to_another_crew_is_judged_there_and_moved_only_where_it_keeps_every_rule() {
        drag(block(MILL), 0.9, lane("P1", "2026-04-14"), 0.5);

        Locator panel = panel("Install of MS1-02");
        assertThat(panel.locator(".verdict")).containsText("a crew does tasks of its own trade");
        assertThat(panel.locator(".verdict")).containsText("crew P1, Tue 14 Apr");
        assertThat(button(panel, "Move and pin it there")).isDisabled();
        assertThat(Axe.trouble(page)).isEmpty();
        button(panel, "Close").click();
        assertThat(panel).hasCount(0);

        drag(block(MILL), 0.9, lane("W1", "2026-04-13"), minuteShare(13 * 60 + 10));
        assertThat(panel.locator(".verdict")).containsText("It keeps every rule there.");
        button(panel, "Move and pin it there").click();

        assertThat(page.locator("week-sheet .block.pinned .nail")).isVisible();
        assertThat(startOf("MS1-02")).startsWith("2026-04-13T19:");
    }

    @Test
    void a_visit_is_moved_with_the_keyboard_alone() {
        block("W1|2026-04-13|0").focus();
        press("ArrowRight", "ArrowRight", "Enter");
        assertThat(page.locator("visit-slip .move").first()).isFocused();
        press("Tab", "Tab", "Enter");

        Locator panel = panel("Install of MS1-02");
        assertThat(panel.locator(".verdict")).containsText("This is where it stands.");
        tabTo("Start");
        press("Control+A");
        page.keyboard().type("10:05");
        press("Enter");
        assertThat(panel.locator(".verdict")).containsText("a crew does one task at a time");

        press("Control+A");
        page.keyboard().type("10:25");
        press("Enter");
        assertThat(panel.locator(".verdict")).containsText("It keeps every rule there.");
        tabTo("Move and pin it there");
        press("Enter");

        assertThat(page.locator("week-sheet .block.pinned .nail")).isVisible();
        assertThat(startOf("MS1-02")).isEqualTo("2026-04-13T17:25:00Z");
    }

    private void drag(Locator what, double grip, Locator where, double at) {
        BoundingBox from = what.boundingBox();
        BoundingBox to = where.boundingBox();
        page.mouse().move(from.x + from.width * grip, from.y + from.height / 2);
        page.mouse().down();
        double x = to.x + to.width * at;
        double y = to.y + to.height / 2;
        page.mouse().move(x - 20, y - 10);
        page.mouse().move(x, y);
        assertThat(page.locator("week-sheet .carried")).isVisible();
        page.mouse().up();
    }

    /** The sheet shows 07:00 to 17:00. */
    private static double minuteShare(int minute) {
        return (minute - 420) / 600.0;
    }

    private void tabTo(String name) {
        for (int i = 0; i < TABS_AT_MOST; i++) {
            if (name.equals(page.evaluate("""
                    () => {
                        const on = document.activeElement;
                        return on?.labels?.[0]?.textContent.trim() || on?.textContent.trim();
                    }"""))) return;
            press("Tab");
        }
        throw new AssertionError("no way by the tab key to " + name);
    }

    private void press(String... keys) {
        for (String key : keys) page.keyboard().press(key);
    }

    private Locator block(String at) {
        return page.locator("week-sheet .block[data-at='%s']".formatted(at));
    }

    private Locator lane(String crew, String date) {
        return page.locator("week-sheet .lane[data-crew='%s'][data-date='%s']".formatted(crew, date));
    }

    private Locator panel(String name) {
        return page.getByRole(AriaRole.DIALOG, new Page.GetByRoleOptions().setName(name));
    }

    private static Locator button(Locator in, String name) {
        return in.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(name));
    }

    private String startOf(String opening) {
        return plans.latest(folder).orElseThrow().visits().stream()
                .filter(one -> one.opening().value().equals(opening) && one.task() == Task.INSTALL)
                .findFirst()
                .orElseThrow()
                .start()
                .toString();
    }
}
