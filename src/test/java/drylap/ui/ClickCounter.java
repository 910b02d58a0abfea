package drylap.ui;

import com.microsoft.playwright.Locator;

/** Every click of a story goes through here, so that none is forgotten. */
final class ClickCounter {
    private int clicks;

    void click(Locator what) {
        clicks++;
        what.click();
    }

    /** Clicks that are not sure to be needed. */
    void add(int more) {
        clicks += more;
    }

    int clicks() {
        return clicks;
    }
}
