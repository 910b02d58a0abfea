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
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A scenario is put together with the keyboard, compared, and read on a wide page and on a phone. */
@PageTest
class WhatIfBrowserTests {
    private static final int PATIENCE_MS = 120_000;
    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Autowired
    private JobFolders folders;

    @Test
    void one_more_crew_is_compared_with_the_job_as_it_is() {
        folders.save("quay", new QuayFolder().folder());
        Page page = Looks.swift(chromium.page(360, 900, ColorScheme.LIGHT));
        page.setDefaultTimeout(PATIENCE_MS);
        SignInPage.at(port).session(page, people.scheduler());
        page.navigate("http://localhost:%d/what-if".formatted(port));

        page.getByLabel("Name of the new crew").focus();
        page.keyboard().type("W2");
        press(page, "Add the change");
        shows(page.getByText("crew W2 comes too"));
        press(page, "Compare");
        shows(page.getByText("Differences are against the job as it is"));

        assertThat(Looks.trouble(page, (width, scheme) -> {
                    bothAreThere(page, width);
                    picture(page, width, scheme);
                }))
                .isEmpty();
        page.close();
    }

    private static void bothAreThere(Page page, int width) {
        Locator sum = page.locator(".outcomes tr").filter(new Locator.FilterOptions().setHasText("Sum"));
        assertThat(sum.locator(".value")).hasCount(2);
        assertThat(sum.locator(".more").last()).isVisible();
        assertThat(sum.locator(".whose").last())
                .isVisible(new LocatorAssertions.IsVisibleOptions().setVisible(width < 700));
        for (String name : List.of("Add the change", "Compare"))
            assertThat(button(page, name)).isVisible();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static void press(Page page, String button) {
        button(page, button).focus();
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
}
