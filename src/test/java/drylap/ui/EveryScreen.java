package drylap.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Walks every way that a role has, by day and by night, and lets axe-core look at each screen. */
abstract class EveryScreen {
    private static final Map<Role, String> CREWS =
            Map.of(Role.WINDOW_CREW, "W1", Role.FOLLOW_ON, "P1", Role.TESTER, "T1");
    private static Chromium chromium;

    private final int width;

    EveryScreen(int width) {
        this.width = width;
    }

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

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void shut() {
        chromium.close();
    }

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
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) walk(role, scheme);
    }

    @Test
    void axe_finds_nothing_on_the_sign_in_page() {
        Page page = chromium.page(width, 740, ColorScheme.DARK);
        page.navigate("http://localhost:%d/".formatted(port));
        page.getByLabel("Password").waitFor();
        assertThat(trouble(page)).isEmpty();
        page.close();
    }

    private void walk(Role role, ColorScheme scheme) {
        Person who = people.add(role, Reach.EVERYWHERE, CREWS.get(role));
        Page page = chromium.page(width, 800, scheme);
        List<String> found = new ArrayList<>();
        page.onPageError(error -> found.add("script: " + error));
        SignInPage.at(port).enter(page, who);
        Locator ways = page.locator("header nav a");
        List<String> addresses = Stream.concat(
                        ways.all().stream().map(way -> way.getAttribute("href")), Stream.of("account"))
                .toList();
        for (String address : addresses) {
            page.navigate("http://localhost:%d/%s".formatted(port, address));
            page.locator("main > *").first().waitFor();
            page.waitForTimeout(500);
            trouble(page).forEach(one -> found.add("%s: %s".formatted(address, one)));
            int sideways = (Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth");
            if (sideways > 0) found.add("%s is %d px too wide".formatted(address, sideways));
        }
        assertThat(found).as("%s at %d px, %s", role, width, scheme).isEmpty();
        page.close();
    }

    /** The rules of WCAG 2.1, levels A and AA, as axe-core checks them. */
    private static List<?> trouble(Page page) {
        page.addScriptTag(new Page.AddScriptTagOptions().setPath(Path.of("node_modules/axe-core/axe.min.js")));
        return (List<?>) page.evaluate("""
                async () => (await axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa']}))
                    .violations.map(rule => rule.id + ': ' + rule.nodes.map(node => node.target.flat().join(' ')).join(', '))""");
    }
}
