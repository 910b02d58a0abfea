package drylap.load;

import drylap.security.TestPeople;
import java.io.IOException;

/** At the door, with name and password. */
final class SignIn {
    private SignIn() {}

    static void as(Ground ground, Browser browser, String name) throws IOException, InterruptedException {
        ground.ask().timed(Kind.SIGN_IN, () -> {
            browser.signIn(name, TestPeople.PASSWORD);
            return name;
        });
    }
}
