package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import drylap.security.People;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@PageTest
class SignInBrowserTests {
    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople testPeople;

    @Autowired
    private People people;

    @Test
    void a_wrong_password_says_so_a_right_one_opens_a_new_session_and_signing_out_ends_it() {
        var who = testPeople.scheduler();
        Page page = chromium.page(360, 740, ColorScheme.LIGHT);
        var door = SignInPage.at(port);
        door.enter(page, who.signInName(), "not the password");
        assertThat(page.getByRole(AriaRole.ALERT)).containsText("Name or password is wrong");
        String before = session(page).value;

        door.enter(page, who);
        assertThat(page).hasURL(Pattern.compile(".*/(start|week-sheet)"));
        Cookie session = session(page);
        assertThat(session.value).isNotEqualTo(before);
        assertThat(session.httpOnly).isTrue();

        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Sign out"))
                .click();
        page.getByLabel("Password").waitFor();
        page.navigate("http://localhost:%d/walls".formatted(port));
        assertThat(page).hasURL(Pattern.compile(".*/sign-in"));
        page.close();
    }

    @Test
    void someone_signed_out_everywhere_is_back_at_the_sign_in_with_the_next_click() {
        var who = testPeople.scheduler();
        Page page = chromium.page(1440, 800, ColorScheme.DARK);
        SignInPage.at(port).enter(page, who);

        people.signOutEverywhere(who, who.id());
        page.navigate("http://localhost:%d/walls".formatted(port));

        assertThat(page).hasURL(Pattern.compile(".*/sign-in"));
        page.close();
    }

    @Test
    void a_screen_that_is_not_theirs_does_not_open() {
        Page page = chromium.page(1440, 800, ColorScheme.LIGHT);
        SignInPage.at(port).enter(page, testPeople.add(Role.ADMINISTRATOR, drylap.kernel.Reach.NOWHERE, null));

        page.navigate("http://localhost:%d/week-sheet".formatted(port));

        page.waitForTimeout(500);
        assertThat(page.locator("week-sheet")).hasCount(0);
        page.close();
    }

    @Test
    void scripts_without_a_session_or_a_token_change_nothing() throws Exception {
        try (var http = HttpClient.newHttpClient()) {
            var me = HttpRequest.newBuilder(URI.create("http://localhost:%d/api/me".formatted(port)));
            var asked = http.send(me.build(), BodyHandlers.ofString());
            assertThat(asked.statusCode()).isEqualTo(401);
            assertThat(asked.headers().firstValue("content-type").orElse("")).contains("application/problem+json");
            var change = HttpRequest.newBuilder(URI.create("http://localhost:%d/api/marks".formatted(port)))
                    .POST(HttpRequest.BodyPublishers.ofString("[]"));
            assertThat(http.send(change.build(), BodyHandlers.ofString()).statusCode())
                    .isEqualTo(403);
        }
    }

    private static Cookie session(Page page) {
        return page.context().cookies().stream()
                .filter(cookie -> cookie.name.equals("JSESSIONID"))
                .findFirst()
                .orElseThrow();
    }
}
