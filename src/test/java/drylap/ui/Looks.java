package drylap.ui;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * A page on a phone and on a wide screen, by day and by night. It is opened once and then turned, since to open it takes longer
 * than to look at it.
 */
final class Looks {
    static final List<Integer> WIDTHS = List.of(360, 1440);

    private Looks() {}

    /** Colours that fade from day to night would be looked at half way: call this before the page is opened. */
    static Page swift(Page page) {
        var rate = new JsonObject();
        rate.addProperty("playbackRate", 1_000);
        page.context().newCDPSession(page).send("Animation.setPlaybackRate", rate);
        return page;
    }

    /**
     * What axe-core finds at each look, and what is too wide. Day and night differ in colours alone (every one is a
     * {@code light-dark} of theme.css), so at night the rules about colours are asked, and by day all of them.
     *
     * @param each is called at each look, before it is judged
     */
    static List<String> trouble(Page page, BiConsumer<Integer, ColorScheme> each) {
        List<String> found = new ArrayList<>();
        for (int width : WIDTHS) {
            page.setViewportSize(width, 900);
            turn(page, ColorScheme.LIGHT);
            each.accept(width, ColorScheme.LIGHT);
            Axe.trouble(page).forEach(one -> found.add("at %d px by day: %s".formatted(width, one)));
            int sideways = Axe.sideways(page);
            if (sideways > 0) found.add("at %d px: %d px too wide".formatted(width, sideways));
            turn(page, ColorScheme.DARK);
            each.accept(width, ColorScheme.DARK);
            Axe.troubleWithColours(page).forEach(one -> found.add("at %d px by night: %s".formatted(width, one)));
        }
        return found;
    }

    static List<String> trouble(Page page) {
        return trouble(page, (_, _) -> {});
    }

    /** Waits until the server has answered, and what follows of it has been drawn. */
    private static void turn(Page page, ColorScheme scheme) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
        page.waitForFunction("Object.values(window.Vaadin.Flow.clients).every(one => !one.isActive?.())");
        page.evaluate("""
                async () => {
                    await document.fonts.ready;
                    for (let i = 0; i < 3; i++) await new Promise(requestAnimationFrame);
                }""");
    }
}
