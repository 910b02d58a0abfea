package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import drylap.planning.JobFolders;
import drylap.security.Person;
import drylap.security.TestPeople;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The season of a site, on a wide page and on a phone, by day and by night. */
@PageTest
class SeasonBrowserTests {
    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @Test
    void a_season_is_drawn_listed_and_taken_along() throws IOException {
        Person who = people.scheduler();
        folders.save("quay", new QuayFolder().folder());
        Page page = Looks.swift(chromium.page(1440, 900, ColorScheme.LIGHT));
        SignInPage.at(port).session(page, who);
        page.navigate("http://localhost:%d/season".formatted(port));

        assertThat(page.locator("season-chart svg[role=img] .use")).hasCount(12);
        page.locator("summary").first().click();
        assertThat(page.locator(".wall-season tbody tr")).hasCount(12);
        theFileIsThere(page);
        assertThat(Looks.trouble(page, (width, scheme) -> {
                    assertThat(page.locator("season-chart svg[role=img] .use")).hasCount(12);
                    assertThat(page.locator(".wall-season tbody tr").last()).isVisible();
                    picture(page, width, scheme);
                }))
                .isEmpty();
        page.setViewportSize(360, 900);
        theFileIsThere(page);
        page.close();
    }

    private static void theFileIsThere(Page page) throws IOException {
        Download file =
                page.waitForDownload(() -> page.getByText("outlook_months.csv").click());
        assertThat(Files.readAllLines(file.path())).hasSize(13);
    }

    private static void picture(Page page, int width, ColorScheme scheme) {
        String place = System.getProperty("drylap.pictures");
        if (place == null) return;
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of(
                        place, "season-%d-%s.png".formatted(width, scheme.name().toLowerCase(Locale.ROOT))))
                .setFullPage(true));
    }
}
