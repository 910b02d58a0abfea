package drylap.ui;

import com.microsoft.playwright.APIRequestContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import drylap.security.DemoPassword;
import drylap.security.Person;
import drylap.security.TestPeople;
import java.util.regex.Pattern;

/** Signs people in as they do it themselves, or, for tests of what lies behind the door, by the same form without a page. */
public record SignInPage(String address) {
    private static final double PATIENCE_MS = 60_000;
    private static final Pattern TOKEN = Pattern.compile("<meta[^>]*name=\"_csrf\"[^>]*content=\"([^\"]+)\"");

    static SignInPage at(int port) {
        return new SignInPage("http://localhost:" + port);
    }

    static SignInPage of(String address) {
        return new SignInPage(address);
    }

    /** @param who one of {@link TestPeople} */
    void enter(Page page, Person who) {
        enter(page, who.signInName(), TestPeople.PASSWORD);
        page.locator(".signed-in").waitFor();
    }

    /** Gives a page's cookies a session: neither the sign-in page nor the first screen is drawn, which takes longer than most tests. */
    void session(Page page, Person who) {
        var api = page.context().request();
        var form = FormData.create()
                .set("username", who.signInName())
                .set("password", TestPeople.PASSWORD)
                .set("_csrf", token(api));
        var answer = api.post(door(), RequestOptions.create().setForm(form).setTimeout(PATIENCE_MS));
        if (!answer.ok() || answer.url().startsWith(door()))
            throw new AssertionError(
                    "%s was not let in: %d at %s".formatted(who.signInName(), answer.status(), answer.url()));
    }

    private String token(APIRequestContext api) {
        var page = TOKEN.matcher(
                api.get(door(), RequestOptions.create().setTimeout(PATIENCE_MS)).text());
        if (!page.find()) throw new AssertionError("the sign-in page has no token");
        return page.group(1);
    }

    private String door() {
        return address + "/sign-in";
    }

    void enterAsSample(Page page, String signInName) {
        enter(page, signInName, DemoPassword.of(signInName));
        page.locator(".signed-in").waitFor();
    }

    void enter(Page page, String name, String password) {
        page.navigate(address + "/");
        page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill(name);
        page.getByLabel("Password", new Page.GetByLabelOptions().setExact(true)).fill(password);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Sign in"))
                .click();
    }
}
