package drylap.ui;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.TimeoutError;

/** Every click of a story goes through here, so that none is forgotten. */
final class ClickCounter {
    private static final double PATIENCE_MS = 2_000;
    private int clicks;

    void click(Locator what) {
        clicks++;
        what.click();
    }

    /** For what is gone once something has ended by itself; counted whether it came to it or not. */
    void clickWhileItIsThere(Locator what) {
        clicks++;
        try {
            if (what.isVisible()) what.click(new Locator.ClickOptions().setTimeout(PATIENCE_MS));
        } catch (TimeoutError gone) {
            // it has ended meanwhile
        }
    }

    int clicks() {
        return clicks;
    }
}
