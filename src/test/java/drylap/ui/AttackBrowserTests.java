package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.RequestOptions;
import drylap.kernel.Reach;
import drylap.planning.JobFolders;
import drylap.planning.PlanRequest;
import drylap.planning.Planner;
import drylap.planning.Plans;
import drylap.planning.Publications;
import drylap.security.NewPerson;
import drylap.security.People;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;
import tools.jackson.databind.json.JsonMapper;

/** Attacks from a browser and without one, on the real server; numbers in brackets are requirements of OWASP ASVS 4.0.3. */
@PageTest
@TestPropertySource(properties = "server.forward-headers-strategy=native")
class AttackBrowserTests {
    /** Runs wherever text is taken for a page. */
    private static final String EVIL = "<img src=x onerror=window.hit=1><script>window.hit=2</script>";

    private static final Pattern NONCE = Pattern.compile("'nonce-([^']+)'");
    private static final Pattern SCRIPT = Pattern.compile("<script[^>]*>");
    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople testPeople;

    @Autowired
    private People people;

    @Autowired
    private JobFolders folders;

    @Autowired
    private Plans plans;

    @Autowired
    private Publications publications;

    /** [14.4.2, 14.4.3, 14.4.4, 14.4.6, 14.4.7, 8.2.1] */
    @Test
    void every_answer_says_what_a_browser_may_do_with_it() throws Exception {
        for (String address :
                List.of("sign-in", "api/me", "api/v1/folders", "calendar/none.ics", "walls", "favicon.svg"))
            assertThat(get(address).headers()).as(address).satisfies(headers -> {
                assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
                assertThat(headers.firstValue("X-Frame-Options")).contains("DENY");
                assertThat(headers.firstValue("Referrer-Policy").orElse("")).isIn("no-referrer", "same-origin");
                assertThat(headers.firstValue("Content-Security-Policy").orElse(""))
                        .contains("default-src", "frame-ancestors 'none'")
                        .doesNotContain("script-src 'unsafe-inline'", "*");
            });
        for (String data : List.of("api/me", "api/v1/folders"))
            assertThat(get(data).headers().firstValue("Content-Disposition").orElse(""))
                    .as(data)
                    .startsWith("attachment");
        for (String kept : List.of("sign-in", "api/me", "walls"))
            assertThat(get(kept).headers().firstValue("Cache-Control").orElse(""))
                    .as(kept)
                    .contains("no-store");
    }

    /** [14.4.3] */
    @Test
    void each_page_marks_its_own_scripts_with_a_word_of_its_own() throws Exception {
        var one = get("sign-in");
        String word = word(one);

        assertThat(SCRIPT.matcher(one.body()).results().map(tag -> tag.group()))
                .isNotEmpty()
                .allSatisfy(tag -> assertThat(tag).contains("nonce=\"%s\"".formatted(word)));
        assertThat(word(get("sign-in"))).isNotEqualTo(word);
    }

    private static String word(HttpResponse<String> page) {
        var found = NONCE.matcher(
                page.headers().firstValue("Content-Security-Policy").orElse(""));
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    /** [5.3.3, 5.3.1, 5.3.2] */
    @Test
    void a_script_that_stands_in_somebodys_text_is_text_on_every_screen() {
        var who = testPeople.add(Role.CONTRACTOR, Reach.EVERYWHERE, null);
        people.add(
                who,
                new NewPerson("evil." + UUID.randomUUID(), EVIL, Role.SCHEDULER, Reach.NOWHERE, null),
                "eight cold kitchens hum");
        publish();
        Page page = chromium.page(1440, 900, ColorScheme.LIGHT);
        List<String> refused = new ArrayList<>();
        page.onConsoleMessage(line -> {
            if (line.text().contains("Content Security Policy")) refused.add(line.text());
        });
        SignInPage.at(port).session(page, who);

        for (String screen : List.of("job-folders", "people", "history", "sites", "walls", "week-sheet")) {
            page.navigate("http://localhost:%d/%s".formatted(port, screen));
            page.locator(".signed-in").waitFor();
            if (!screen.startsWith("w"))
                assertThat(page.getByText(EVIL).first()).isAttached();
            else page.locator("week-sheet, facade-drawing").first().waitFor();
            assertThat(page.evaluate("window.hit")).as(screen).isNull();
        }
        assertThat(refused).as("what our own pages were refused").isEmpty();

        // [14.4.3] and where text were taken for a page one day, the browser would run nothing of it
        page.evaluate("() => { const own = document.createElement('script'); own.textContent = 'window.hit = 3';"
                + " document.head.append(own); }");
        assertThat(page.evaluate("window.hit")).isNull();
        page.close();
    }

    /** [3.2.2, 3.4.1, 3.4.2, 3.4.3, 14.4.5] */
    @Test
    void behind_a_proxy_with_tls_the_cookie_goes_by_tls_only() throws Exception {
        var behind = send(HttpRequest.newBuilder(at("sign-in")).header("X-Forwarded-Proto", "https"));

        assertThat(behind.headers().firstValue("Set-Cookie").orElse(""))
                .matches("JSESSIONID=[0-9A-F]{32};.*") // 128 bits
                .contains("Secure", "HttpOnly", "SameSite=Lax");
        assertThat(behind.headers().firstValue("Strict-Transport-Security").orElse(""))
                .contains("max-age=31536000", "includeSubDomains");
    }

    /** [4.2.2, 13.2.3] */
    @Test
    void nobody_is_let_in_by_a_form_of_another_page() throws Exception {
        var who = testPeople.scheduler();
        String form = "username=%s&password=%s"
                .formatted(who.signInName(), URLEncoder.encode(TestPeople.PASSWORD, StandardCharsets.UTF_8));
        var sent = send(HttpRequest.newBuilder(at("sign-in"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)));
        String cookie = sent.headers().firstValue("Set-Cookie").orElse("none=").split(";")[0];

        assertThat(send(HttpRequest.newBuilder(at("api/me")).header("Cookie", cookie))
                        .statusCode())
                .isEqualTo(401);
    }

    /** [7.4.1, 14.3.3, 14.5.1] */
    @Test
    void what_goes_wrong_says_nothing_of_the_inside() throws Exception {
        var answers = List.of(
                get("sign-in?a=%00%ff"),
                get("api/openings/x/y"),
                get("calendar/..%2f..%2fetc"),
                get("papers/record.pdf?id=x"),
                send(HttpRequest.newBuilder(at("sign-in")).method("TRACE", HttpRequest.BodyPublishers.noBody())));

        assertThat(answers).allSatisfy(answer -> {
            assertThat(answer.statusCode()).isBetween(300, 499);
            assertThat(answer.headers().firstValue("Server")).isEmpty();
            assertThat(answer.headers().firstValue("X-Powered-By")).isEmpty();
            assertThat(answer.body()).doesNotContain("Tomcat", "Exception", "at drylap.", "at org.");
        });
    }

    /** [12.1.1, 11.1.4, 13.1.5, 13.2.5] */
    @Test
    void a_body_that_is_too_large_or_of_another_kind_is_refused() {
        Page page = chromium.page(360, 740, ColorScheme.LIGHT);
        SignInPage.at(port).session(page, testPeople.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "W1"));
        var api = page.context().request();
        String token = JsonMapper.builder()
                .build()
                .readTree(api.get(at("api/me").toString()).body())
                .path("token")
                .stringValue();

        var large = api.post(marks(), body(token, "application/json", "[" + " ".repeat(4 << 20) + "]"));
        assertThat(large.status()).isEqualTo(413);
        assertThat(large.text()).contains("more than 4 MiB");
        for (String kind : List.of("text/plain", "application/xml", "application/x-www-form-urlencoded"))
            assertThat(api.post(marks(), body(token, kind, "[]")).status())
                    .as(kind)
                    .isEqualTo(415);
        assertThat(api.post(marks(), body(token, "application/json", "[]")).status())
                .isEqualTo(200);
        page.close();
    }

    private String marks() {
        return at("api/marks").toString();
    }

    private static RequestOptions body(String token, String kind, String text) {
        return RequestOptions.create()
                .setHeader("X-XSRF-TOKEN", token)
                .setHeader("Content-Type", kind)
                .setData(text);
    }

    /** [3.3.1, 3.3.3] */
    @Test
    void whoever_was_signed_out_is_nobody_to_the_scripts_and_to_pages_left_open() {
        var who = testPeople.scheduler();
        Page open = chromium.page(1440, 900, ColorScheme.LIGHT);
        SignInPage.at(port).session(open, who);
        open.navigate(at("records").toString());
        open.locator(".signed-in").waitFor();
        Page page = chromium.page(360, 740, ColorScheme.LIGHT);
        SignInPage.at(port).session(page, who);
        var api = page.context().request();
        assertThat(api.get(at("api/me").toString()).status()).isEqualTo(200);

        people.setPassword(who, who.id(), "another long password");

        for (String address : List.of("api/me", "api/day", "api/openings/1/one", "api/v1/folders"))
            assertThat(api.get(at(address).toString()).status()).as(address).isEqualTo(401);
        assertThat(open).hasURL(Pattern.compile(".*/sign-in"));
        open.close();
        page.close();
    }

    /** [2.3.1, 2.5.1] */
    @Test
    void whoever_came_in_by_a_password_that_somebody_else_set_gets_no_page_and_no_data_before_another_one() {
        var id = people.add(
                testPeople.add(Role.ADMINISTRATOR, Reach.NOWHERE, null),
                new NewPerson("given." + UUID.randomUUID(), "Given Person", Role.SCHEDULER, Reach.EVERYWHERE, null),
                TestPeople.PASSWORD);
        Page page = chromium.page(360, 740, ColorScheme.LIGHT);
        SignInPage.at(port).session(page, testPeople.person(id));
        var api = page.context().request();

        for (String address : List.of("api/me", "api/day", "api/openings/1/one", "api/v1/folders"))
            assertThat(api.get(at(address).toString()).status()).as(address).isEqualTo(401);
        for (String address : List.of("walls", "crew/steps")) {
            page.navigate(at(address).toString());
            assertThat(page).hasURL(Pattern.compile(".*/account"));
        }
        assertThat(page.getByText("Somebody else set this password for you")).isVisible();

        page.getByLabel("Password now").fill(TestPeople.PASSWORD);
        page.getByLabel("New password").fill("seven warm ladders sing");
        assertThat(page.getByRole(AriaRole.METER)).hasAttribute("aria-valuenow", "4");
        assertThat(Axe.trouble(page)).isEmpty();
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Set the password"))
                .click();
        assertThat(page).hasURL(Pattern.compile(".*/sign-in"));
        page.close();
    }

    private void publish() {
        var quay = new QuayFolder()
                .told()
                .with("sites.csv", "Quay Nine", EVIL)
                .with("sites.csv", "Sample Harbour", EVIL)
                .folder();
        var folder = folders.save(EVIL, quay);
        var plan = Planner.standard().plan(quay, new PlanRequest(null, null, 200L, 1), _ -> {}, () -> false);
        publications.publishSample(folder, plans.save(folder, plan));
    }

    private URI at(String address) {
        return URI.create("http://localhost:%d/%s".formatted(port, address));
    }

    private HttpResponse<String> get(String address) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(at(address)));
    }

    private static HttpResponse<String> send(HttpRequest.Builder asked) throws IOException, InterruptedException {
        try (var http = HttpClient.newHttpClient()) {
            return http.send(asked.build(), BodyHandlers.ofString());
        }
    }
}
