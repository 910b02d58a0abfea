package drylap.ui;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import drylap.security.DemoPassword;
import drylap.security.Person;
import drylap.security.TestPeople;

/** Signs people in as they do it themselves. */
public record SignInPage(String address) {
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
