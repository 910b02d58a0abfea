package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import drylap.intake.FolderReader;
import drylap.intake.FolderReading;
import drylap.intake.FolderSource;
import drylap.planning.JobFolder;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.TestPeople;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The odds of the sample week are reckoned, read on a phone and on a wide page, by day and by night, and taken along. */
@PageTest
class OddsBrowserTests {
    private static final int PATIENCE_MS = 180_000;
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

    @Test
    void odds_are_reckoned_read_and_taken_along() throws IOException {
        publish();
        Page page = chromium.page(1440, 900, ColorScheme.LIGHT);
        page.setDefaultTimeout(PATIENCE_MS);
        SignInPage.at(port).enter(page, people.scheduler());
        page.navigate("http://localhost:%d/odds".formatted(port));
        assertThat(page.getByText("Hand-over of facades").first())
                .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(PATIENCE_MS));

        assertThat(page.locator("handover-odds svg").first()).isVisible();
        assertThat(page.locator("crew-day-odds tbody td b").first()).isVisible();
        assertThat(page.locator("wet-odds li.opening")).hasCount(12);
        theFileIsTheTable(page);
        everyLookIsRight(page);
        page.close();
    }

    private void publish() {
        JobFolder week =
                ((FolderReading.Read) FolderReader.read(FolderSource.of(Path.of("sample-data/harbour-week")))).folder();
        var id = folders.save("harbour-week", week);
        var plan = Planner.standard().plan(week, new PlanRequest(null, null, 500L, 1), _ -> {}, () -> false);
        publications.publish(people.scheduler(), id, plans.save(id, plan, week), null);
    }

    /** Row for row, head for head; dates are written for machines in the file, so columns of words and figures are compared. */
    private static void theFileIsTheTable(Page page) throws IOException {
        Locator panel = page.locator(".odds-crew-days");
        panel.locator("summary").focus();
        page.keyboard().press("Enter");
        List<String> heads = panel.locator(".odds-table th").allTextContents();
        List<String> crews = panel.locator(".odds-table tbody td:nth-child(1)").allTextContents();
        List<String> chances =
                panel.locator(".odds-table tbody td:nth-child(3)").allTextContents();
        Download download =
                page.waitForDownload(() -> panel.locator("a[download$='.csv']").click());

        List<String> lines = Files.readString(download.path(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertThat(download.suggestedFilename()).isEqualTo("odds-crew-days.csv");
        assertThat(lines.getFirst())
                .isEqualTo(String.join(
                        ",", heads.stream().map(OddsBrowserTests::quoted).toList()));
        assertThat(lines.stream().skip(1).map(line -> line.split(",")[0])).isEqualTo(crews);
        assertThat(lines.stream().skip(1).map(line -> line.split(",")[2])).isEqualTo(chances);
        assertThat(lines.get(1).split(",")[1]).matches("\\d{4}-\\d{2}-\\d{2}");
        panel.locator("summary").click();
    }

    private static String quoted(String head) {
        return head.contains(",") ? '"' + head + '"' : head;
    }

    private static void everyLookIsRight(Page page) {
        for (int width : List.of(1440, 360)) {
            page.setViewportSize(width, 900);
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                page.waitForTimeout(400);
                picture(page, width, scheme);
                assertThat(Axe.trouble(page)).as("%d, %s", width, scheme).isEmpty();
                assertThat(Axe.sideways(page)).as("%d, %s", width, scheme).isNotPositive();
            }
        }
    }

    private static void picture(Page page, int width, ColorScheme scheme) {
        String folder = System.getProperty("drylap.pictures");
        if (folder == null) return;
        page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(Path.of(
                        folder, "odds-%d-%s.png".formatted(width, scheme.name().toLowerCase(Locale.ROOT)))));
    }
}
