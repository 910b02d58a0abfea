package drylap.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.TimeoutError;
import com.microsoft.playwright.options.ColorScheme;
import drylap.kernel.Reach;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * Walks every way that a role has, and lets axe-core look at each screen on a phone and on a wide page, by day and by night. A
 * screen is opened once and then turned: opening it takes longer than looking at it.
 */
@PageTest
class EveryScreenBrowserTests {
    private static final Map<Role, String> CREWS =
            Map.of(Role.WINDOW_CREW, "W1", Role.FOLLOW_ON, "P1", Role.TESTER, "T1");
    private static final List<Integer> WIDTHS = List.of(360, 1440);
    private static final List<ColorScheme> SCHEMES = List.of(ColorScheme.LIGHT, ColorScheme.DARK);

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

    @BeforeEach
    void a_plan_is_published() {
        var quay = new QuayFolder().folder();
        var id = folders.save("quay", quay);
        var plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        publications.publish(people.scheduler(), id, plans.save(id, plan), null);
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void axe_finds_nothing_on_the_screens_of(Role role) {
        Person who = people.add(role, Reach.EVERYWHERE, CREWS.get(role));
        Page page = open();
        List<String> found = new ArrayList<>();
        page.onPageError(error -> found.add("script: " + error));
        SignInPage.at(port).enter(page, who);
        for (String address : addresses(page)) {
            page.navigate("http://localhost:%d/%s".formatted(port, address));
            seen(page, address);
            look(page, address, found);
        }
        assertThat(found).as("%s", role).isEmpty();
        page.close();
    }

    @Test
    void axe_finds_nothing_on_the_sign_in_page() {
        Page page = open();
        List<String> found = new ArrayList<>();
        page.navigate("http://localhost:%d/".formatted(port));
        page.getByLabel("Password").waitFor();
        look(page, "sign-in", found);
        assertThat(found).isEmpty();
        page.close();
    }

    private static void seen(Page page, String address) {
        try {
            page.locator("main > *").first().waitFor();
        } catch (TimeoutError nothing) {
            throw new AssertionError(
                    "%s shows nothing: %s"
                            .formatted(address, page.locator("body").innerText()),
                    nothing);
        }
    }

    private Page open() {
        Page page = chromium.page(WIDTHS.getFirst(), 800, SCHEMES.getFirst());
        // colours that fade from day to night would be looked at half way
        var rate = new JsonObject();
        rate.addProperty("playbackRate", 1_000);
        page.context().newCDPSession(page).send("Animation.setPlaybackRate", rate);
        return page;
    }

    private static List<String> addresses(Page page) {
        return Stream.concat(
                        page.locator("header nav a").all().stream().map(way -> way.getAttribute("href")),
                        Stream.of("account", "programs"))
                .toList();
    }

    private static void look(Page page, String address, List<String> found) {
        for (int width : WIDTHS) {
            page.setViewportSize(width, 800);
            for (ColorScheme scheme : SCHEMES) {
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                settle(page);
                Axe.trouble(page)
                        .forEach(one -> found.add("%s at %d px, %s: %s".formatted(address, width, scheme, one)));
            }
            int sideways = Axe.sideways(page);
            if (sideways > 0) found.add("%s at %d px is %d px too wide".formatted(address, width, sideways));
        }
    }

    /** The server has answered, and what follows of it has been drawn. */
    private static void settle(Page page) {
        page.waitForFunction("Object.values(window.Vaadin.Flow.clients).every(one => !one.isActive?.())");
        page.evaluate("""
                async () => {
                    await document.fonts.ready;
                    for (let i = 0; i < 3; i++) await new Promise(requestAnimationFrame);
                }""");
    }
}
