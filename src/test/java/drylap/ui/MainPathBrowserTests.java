package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import drylap.security.TestPeople;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@PageTest
class MainPathBrowserTests {
    private static Chromium chromium;

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void shut() {
        chromium.close();
    }

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
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Stop"))
                .click();
        assertThat(page.locator("plan-run .words")).containsText("Stopped");
        assertNoSidewaysScroll(page);
        assertAccessible(page);

        blocks.locator("visible=true").first().focus();
        assertThat(page.locator("visit-slip h3")).isVisible();
        page.locator("visit-slip li button").first().click();
        assertThat(heading(page, Pattern.compile("Laps of .*"))).isVisible();

        page.locator("facade-drawing .opening").last().click();
        assertThat(page.locator("facade-drawing .opening").last()).hasAttribute("aria-pressed", "true");
        assertThat(page.locator("lap-section svg .water-path").first()).isAttached();
        assertNoSidewaysScroll(page);
        assertAccessible(page);
        assertThat(errors).isEmpty();
        page.close();
    }

    /** The rules of WCAG 2.1, levels A and AA, as axe-core checks them. */
    private static void assertAccessible(Page page) {
        page.addScriptTag(new Page.AddScriptTagOptions().setPath(Path.of("node_modules/axe-core/axe.min.js")));
        Object found = page.evaluate("""
                async () => (await axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa']}))
                    .violations.map(rule => rule.id + ': ' + rule.nodes.map(node => node.target.flat().join(' ')).join(', '))""");
        assertThat((List<?>) found).isEmpty();
    }

    private static void bring(Page page, String name, QuayFolder folder) {
        page.locator("input[type=file]").setInputFiles(new FilePayload(name, "application/zip", folder.zip()));
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

    private static void assertNoSidewaysScroll(Page page) {
        assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .isLessThanOrEqualTo(0);
    }
}
