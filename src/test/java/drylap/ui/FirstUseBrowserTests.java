package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions.HasTextOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolders;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.planning.Visit;
import drylap.security.FirstCode;
import drylap.security.FirstUse;
import drylap.sites.Opening;
import drylap.tables.Cell;
import drylap.tables.Table;
import drylap.tables.Workbook;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

/** A stranger with a window schedule comes to an empty database, and crews see a published plan of it. */
@PageTest
@TestPropertySource(properties = "drylap.test-database=stranger")
@DirtiesContext(classMode = DirtiesContext.ClassMode.AFTER_CLASS)
class FirstUseBrowserTests {
    private static final int MOST_CLICKS = 25;
    /** A first run ends by itself after half a minute. */
    private static final double RUN_MS = 90_000;

    private static final Pattern ENDED = Pattern.compile("Planned|Stopped.*");
    private static final String PASSWORD = "a long enough one";
    private static final List<String> SIDES = List.of("North", "East", "South", "West");
    private static final List<String> TITLES =
            List.of("Mark", "Qty", "RO width (mm)", "RO height (mm)", "Floor", "Elevation", "Material", "Method");
    private static final ZoneId ZONE = ZoneId.of("Europe/Lisbon");

    private final Chromium chromium = Chromium.shared();
    private final ClickCounter by = new ClickCounter();

    @LocalServerPort
    private int port;

    @Autowired
    private FirstUse first;

    @Autowired
    private JobFolders folders;

    @Autowired
    private Publications publications;

    @Autowired
    private Plans plans;

    @Autowired
    private Clock clock;

    @Test
    void from_an_empty_database_to_a_published_plan_in_at_most_25_clicks() {
        List<String> errors = new ArrayList<>();
        Page page = chromium.page(1440, 900, ColorScheme.LIGHT);
        page.onPageError(errors::add);
        makesTheFirstAccount(page);
        putsInASite(page);
        takesInTheSchedule(page);
        putsInTheCrews(page);
        plansAndPublishes(page);

        assertThat(by.clicks()).isLessThanOrEqualTo(MOST_CLICKS);
        isStoredAndPublished();

        page.setViewportSize(360, 800);
        page.navigate("http://localhost:%d/start".formatted(port));
        assertThat(page.locator(".start-steps > .done")).hasCount(6);
        sound(page);
        assertThat(errors).isEmpty();
        page.close();
    }

    /** How good a plan is that was stopped early is no matter of this test. */
    private void isStoredAndPublished() {
        FolderId folder = folders.list().getFirst().id();
        assertThat(publications.inWork()).contains(folder);
        List<OpeningId> openings =
                folders.load(folder).openings().stream().map(Opening::id).toList();
        assertThat(openings).hasSize(12);
        var published = publications.latest(folder).orElseThrow();
        assertThat(published.by()).isEqualTo("Nils Ohm");
        assertThat(plans.load(published.plan()).visits())
                .isNotEmpty()
                .extracting(Visit::opening)
                .isSubsetOf(openings);
    }

    private void makesTheFirstAccount(Page page) {
        page.navigate("http://localhost:%d/".formatted(port));
        field(page, "Code").fill("not the code");
        field(page, "Your name").fill("Nils Ohm");
        field(page, "Name to sign in with").fill("nils");
        field(page, "Password").fill(PASSWORD);
        field(page, "Password").press("Enter");
        assertThat(page.getByRole(AriaRole.ALERT)).containsText("The code is another one");
        field(page, "Code").fill(FirstCode.of(first));
        field(page, "Password").focus();
        by.click(button(page, "Make the first account"));
        assertThat(page).hasURL(Pattern.compile(".*/sign-in"));
        field(page, "Name").fill("nils");
        field(page, "Password").fill(PASSWORD);
        by.click(button(page, "Sign in"));
        assertThat(page.locator(".start-steps > .next")).containsText("A site with its place");
        sound(page);
    }

    private void putsInASite(Page page) {
        by.click(link(page, "A site with its place"));
        field(page, "Name of the site").fill("Rua Nova");
        field(page, "Place: latitude, longitude").fill("41.15, -8.61");
        field(page, "Time zone").fill(ZONE.getId());
        field(page, "Time zone").press("Enter");
        field(page, "Time zone").press("Tab");
        for (String side : SIDES)
            by.click(page.locator("vaadin-checkbox label")
                    .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^" + side + "$"))));
        by.click(button(page, "Save the site"));
        assertThat(page.getByText("Rua Nova is saved.")).isVisible();
        sound(page);
        by.click(link(page, "Next: its openings"));
    }

    private void takesInTheSchedule(Page page) {
        page.locator("input[type=file]")
                .setInputFiles(new FilePayload("windows.xlsx", Workbook.MEDIA_TYPE, Workbook.xlsx(schedule())));
        choose(page, "Approach", "drainage");
        choose(page, "Second layer", "none");
        field(page, "First date for setting")
                .fill(LocalDate.now(clock.withZone(ZONE)).toString());
        field(page, "First date for setting").press("Tab");
        by.click(button(page, "Take the openings in"));
        assertThat(page.getByText("12 openings are new")).isVisible();
        by.click(link(page, "Start"));
    }

    /** As an office program saves it: a line for each window, three on each side. */
    private static Table schedule() {
        List<List<Cell>> rows = new ArrayList<>();
        for (String side : SIDES)
            for (int floor = 1; floor <= 3; floor++)
                rows.add(List.of(
                        text(side.charAt(0) + Integer.toString(floor)),
                        Cell.count(1),
                        Cell.count(1200),
                        Cell.count(1400),
                        Cell.count(floor),
                        text(side),
                        text("vinyl"),
                        text("A1")));
        return new Table("Windows", TITLES, rows);
    }

    private static Cell text(String words) {
        return new Cell.Text(words);
    }

    private void putsInTheCrews(Page page) {
        by.click(link(page, "Crews and their days"));
        for (String crew : List.of("window-1", "wrap-1", "siding-1")) {
            field(page, "Name of the crew").fill(crew);
            by.click(button(page, "Save the crew"));
            assertThat(page.getByText("Crew %s is saved.".formatted(crew))).isVisible();
        }
        sound(page);
        by.click(link(page, "Back to the start"));
    }

    private void plansAndPublishes(Page page) {
        by.click(button(page, "Plan now"));
        assertThat(page.locator("week-sheet .block").first()).isAttached();
        assertThat(page.getByText(Pattern.compile("No forecast: Rua Nova"))).isVisible();
        by.clickWhileItIsThere(button(page, "Stop"));
        assertThat(page.locator("plan-run .words")).hasText(ENDED, new HasTextOptions().setTimeout(RUN_MS));
        by.click(button(page, "Publish this proposal"));
        assertThat(page.getByText(Pattern.compile("Published .* by Nils Ohm"))).isVisible();
    }

    private void choose(Page page, String label, String item) {
        by.click(page.locator("vaadin-select")
                .filter(new Locator.FilterOptions().setHasText(label))
                .first());
        by.click(page.getByRole(
                AriaRole.OPTION, new Page.GetByRoleOptions().setName(item).setExact(true)));
    }

    private static void sound(Page page) {
        assertThat(Axe.sideways(page)).isNotPositive();
        assertThat(Axe.trouble(page)).isEmpty();
    }

    private static Page.GetByLabelOptions exact() {
        return new Page.GetByLabelOptions().setExact(true);
    }

    private static Locator field(Page page, String label) {
        return page.getByLabel(label, exact());
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static Locator link(Page page, String name) {
        return page.getByRole(
                AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
