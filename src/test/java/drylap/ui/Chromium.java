package drylap.ui;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.awaitility.Awaitility;

/** The browser that the system has; nothing is downloaded. */
final class Chromium {
    private static final List<String> FLAGS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private static final Chromium SHARED = new Chromium();

    private final Playwright playwright;
    private final Browser browser;

    private Chromium() {
        // a busy machine is slow, not wrong
        PlaywrightAssertions.setDefaultAssertionTimeout(20_000);
        Awaitility.setDefaultTimeout(Duration.ofSeconds(40)); // a page asks again after fifteen seconds
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(binary())
                        .setHeadless(true)
                        .setArgs(FLAGS));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
    }

    /** One browser for all tests of this process; pages that a test before has left open, as one that failed does, are shut. */
    static Chromium shared() {
        List.copyOf(SHARED.browser.contexts()).forEach(BrowserContext::close);
        return SHARED;
    }

    /** A page with cookies and a store of its own, for the test to close. */
    Page page(int width, int height, ColorScheme scheme) {
        Page page = browser.newPage(
                new Browser.NewPageOptions().setViewportSize(width, height).setColorScheme(scheme));
        page.setDefaultTimeout(60_000);
        return page;
    }

    private static Path binary() {
        return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(
                        () -> new IllegalStateException("no Chromium under /usr/bin; install the package chromium"));
    }
}
