package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.TimeoutError;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import drylap.security.TestPeople;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@PageTest
class MainPathBrowserTests {
    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @ParameterizedTest(name = "at {0} px")
    @ValueSource(ints = {1440, 360})
    void a_folder_is_refused_then_taken_in_planned_and_read_down_to_the_laps(int width) {
        List<String> errors = new ArrayList<>();
        Page page = chromium.page(width, 800, ColorScheme.LIGHT);
        page.onPageError(errors::add);
        SignInPage.at(port).enter(page, people.scheduler());
        page.navigate("http://localhost:%d/job-folders".formatted(port));

        bring(
                page,
                "bad.zip",
                new QuayFolder()
                        .with("openings.csv", "QW1-02,1200", "QW1-02,wide")
                        .with("crews.csv", "C1,siding", "C1,roofing"));
        assertThat(heading(page, "bad.zip was not taken in")).isVisible();
        assertThat(page.getByText("width_mm")).isVisible();
        assertThat(page.getByText("roofing")).isVisible();

        page.reload();
        bring(page, "quay %d.zip".formatted(width), new QuayFolder());
        assertThat(heading(page, "quay %d.zip was taken in".formatted(width))).isVisible();

        way(page, "Week sheet");
        Locator blocks = page.locator("week-sheet .block");
        assertThat(blocks.first()).isAttached();
        assertThat(page.locator("plan-run .words")).containsText(Pattern.compile("Plan"));
        stop(page);
        assertThat(Axe.sideways(page)).isNotPositive();
        assertThat(Axe.trouble(page)).isEmpty();

        blocks.locator("visible=true").first().focus();
        assertThat(page.locator("visit-slip h3")).isVisible();
        page.locator("visit-slip li button").first().click();
        assertThat(heading(page, Pattern.compile("Laps of .*"))).isVisible();

        page.locator("facade-drawing .opening").last().click();
        assertThat(page.locator("facade-drawing .opening").last()).hasAttribute("aria-pressed", "true");
        assertThat(page.locator("lap-section svg .water-path").first()).isAttached();
        assertThat(Axe.sideways(page)).isNotPositive();
        assertThat(Axe.trouble(page)).isEmpty();
        assertThat(errors).isEmpty();
        page.close();
    }

    private static void bring(Page page, String name, QuayFolder folder) {
        page.locator("input[type=file]").setInputFiles(new FilePayload(name, "application/zip", folder.zip()));
    }

    /** The run of a folder that was taken in is short: where the machine is so slow that it has ended, a long one is stopped. */
    private static void stop(Page page) {
        Locator words = page.locator("plan-run .words");
        Locator stop = page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Stop"));
        if (stop.isVisible()) clickWhileItIsThere(stop);
        assertThat(words).hasText(Pattern.compile("Planned|Stopped.*"));
        if (words.textContent().startsWith("Stopped")) return;
        page.locator(".plan-bar vaadin-select").click();
        page.getByRole(AriaRole.OPTION, new Page.GetByRoleOptions().setName("15 min"))
                .click();
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Plan again"))
                .click();
        stop.click();
        assertThat(words).containsText("Stopped");
    }

    private static void clickWhileItIsThere(Locator button) {
        try {
            button.click(new Locator.ClickOptions().setTimeout(2_000));
        } catch (TimeoutError gone) {
            // the run has ended meanwhile
        }
    }

    private static Locator heading(Page page, Object name) {
        var options = new Page.GetByRoleOptions();
        return page.getByRole(
                AriaRole.HEADING, name instanceof Pattern p ? options.setName(p) : options.setName((String) name));
    }

    private static void way(Page page, String name) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true))
                .click();
    }
}
