package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import drylap.planning.JobFolders;
import drylap.security.TestPeople;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A scenario is put together with the keyboard, compared, and read on a wide page and on a phone. */
@PageTest
class WhatIfBrowserTests {
    private static final int PATIENCE_MS = 120_000;
    private static Chromium chromium;

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void shut() {
        chromium.close();
    }

    @ParameterizedTest
    @CsvSource({"1440, LIGHT", "360, DARK"})
    void one_more_crew_is_compared_with_the_job_as_it_is(int width, ColorScheme scheme) {
        folders.save("quay", new QuayFolder().folder());
        Page page = chromium.page(width, 900, scheme);
        page.setDefaultTimeout(PATIENCE_MS);
        SignInPage.at(port).enter(page, people.scheduler());
        page.navigate("http://localhost:%d/what-if".formatted(port));

        page.getByLabel("Name of the new crew").focus();
        page.keyboard().type("W2");
        press(page, "Add the change");
        shows(page.getByText("crew W2 comes too"));
        press(page, "Compare");
        shows(page.getByText("Differences are against the job as it is"));

        Locator sum = page.locator(".outcomes tr").filter(new Locator.FilterOptions().setHasText("Sum"));
        assertThat(sum.locator(".value")).hasCount(2);
        assertThat(sum.locator(".more").last()).isVisible();
        assertThat(sum.locator(".whose").last())
                .isVisible(new LocatorAssertions.IsVisibleOptions().setVisible(width < 700));
        assertThat(trouble(page)).isEmpty();
        assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .isNotPositive();
        picture(page, width, scheme);
        page.close();
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .focus();
        page.keyboard().press("Enter");
    }

    private static void shows(Locator what) {
        assertThat(what.first()).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(PATIENCE_MS));
    }

    private static void picture(Page page, int width, ColorScheme scheme) {
        String place = System.getProperty("drylap.pictures");
        if (place == null) return;
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of(
                        place,
                        "what-if-compared-%d-%s.png"
                                .formatted(width, scheme.name().toLowerCase(Locale.ROOT))))
                .setFullPage(true));
    }

    private static List<?> trouble(Page page) {
        page.addScriptTag(new Page.AddScriptTagOptions().setPath(Path.of("node_modules/axe-core/axe.min.js")));
        return (List<?>) page.evaluate("""
                async () => (await axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa']}))
                    .violations.map(rule => rule.id + ': ' + rule.nodes.map(node => node.target.flat().join(' ')).join(', '))""");
    }
}
