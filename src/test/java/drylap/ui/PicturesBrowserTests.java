package drylap.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** Takes a picture of every screen that anybody of the sample has, as {@code -Ddrylap.pictures=FOLDER} asks. */
@PageTest
@EnabledIfSystemProperty(named = "drylap.pictures", matches = ".+")
@TestPropertySource(properties = {"drylap.demo=sample-data/harbour-week", "drylap.demo-people=allow"})
class PicturesBrowserTests {
    private static final List<String> PEOPLE = List.of("mara", "sol", "kit", "olaf", "ines");
    private static final Pattern PLANNED = Pattern.compile("Planned|Stopped.*");
    /** Screens whose lower parts matter as much. */
    private static final Set<String> TO_THE_END = Set.of("week-sheet", "walls", "sites", "aprons");

    private final Chromium chromium = Chromium.shared();

    @LocalServerPort
    private int port;

    private enum Format {
        WIDE_LIGHT("1440-light", 1440, 900, ColorScheme.LIGHT),
        WIDE_DARK("1440-dark", 1440, 900, ColorScheme.DARK),
        PHONE_LIGHT("360-light", 360, 740, ColorScheme.LIGHT),
        PHONE_DARK("360-dark", 360, 740, ColorScheme.DARK);

        private final String words;
        private final int width;
        private final int height;
        private final ColorScheme scheme;

        Format(String words, int width, int height, ColorScheme scheme) {
            this.words = words;
            this.width = width;
            this.height = height;
            this.scheme = scheme;
        }
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void every_screen_has_its_picture(Format format) {
        Set<String> taken = new HashSet<>();
        List<String> errors = new ArrayList<>();
        signIn(format);
        for (String person : PEOPLE) {
            Page page = chromium.page(format.width, format.height, format.scheme);
            page.onPageError(errors::add);
            SignInPage.at(port).enterAsSample(page, person);
            for (String way : ways(page)) if (taken.add(way)) take(page, way, format);
            if (person.equals("ines")) visit(page, format);
            if (person.equals("mara")) steps(page, format);
            if (person.equals("sol")) record(page, format);
            page.close();
        }
        assertThat(errors).isEmpty();
        assertThat(taken).contains("week-sheet", "my-day", "aprons", "people");
    }

    private static List<String> ways(Page page) {
        List<String> ways = new ArrayList<>(page.locator("header nav a").all().stream()
                .map(way -> way.getAttribute("href"))
                .toList());
        ways.add("account");
        ways.add("programs");
        return ways;
    }

    private void signIn(Format format) {
        Page page = chromium.page(format.width, format.height, format.scheme);
        go(page, "");
        page.getByLabel("Password").waitFor();
        shot(page, "sign-in", format, false);
        page.close();
    }

    private void take(Page page, String way, Format format) {
        go(page, way);
        page.locator("main > *").first().waitFor();
        if (way.equals("week-sheet")) planned(page);
        if (way.equals("my-day")) turnToAStop(page);
        if (way.equals("aprons"))
            page.locator("facade-drawing .opening").first().click();
        shot(page, way, format, TO_THE_END.contains(way));
    }

    private static void planned(Page page) {
        assertThat(page.locator("plan-run .words"))
                .hasText(PLANNED, new LocatorAssertions.HasTextOptions().setTimeout(120_000));
        turnToADayWithWork(page);
    }

    /** A phone shows one day at a time. */
    private static void turnToADayWithWork(Page page) {
        for (var day : page.locator("week-sheet .days button").all()) {
            if (page.locator("week-sheet .block").locator("visible=true").count() > 0 || !day.isVisible()) return;
            day.click();
            page.waitForTimeout(300);
        }
    }

    private void visit(Page page, Format format) {
        go(page, "week-sheet");
        planned(page);
        page.locator("week-sheet .block").locator("visible=true").first().focus();
        page.locator("visit-slip h3").waitFor();
        shot(page, "visit", format, false);
    }

    private void steps(Page page, Format format) {
        go(page, "my-day");
        turnToAStop(page);
        page.locator(".stop a").last().click();
        page.locator("step-marker .mark-it").waitFor();
        shot(page, "steps", format, false);
    }

    private static void turnToAStop(Page page) {
        for (int day = 0; page.locator(".stop a").count() == 0 && day < 7; day++) {
            page.getByText("Day after").click();
            page.waitForTimeout(500);
        }
    }

    private void record(Page page, Format format) {
        go(page, "records");
        page.locator(".records li a").first().click();
        page.locator(".record-panel").waitFor();
        shot(page, "record", format, false);
    }

    private void go(Page page, String way) {
        page.navigate("http://localhost:%d/%s".formatted(port, way));
    }

    private static void shot(Page page, String name, Format format, boolean whole) {
        page.waitForTimeout(800);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of(System.getProperty("drylap.pictures"), "%s-%s.png".formatted(name, format.words)))
                .setFullPage(whole));
    }
}
