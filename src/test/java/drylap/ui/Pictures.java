package drylap.ui;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;

/** Takes the pictures of src/docs/pictures from a running Drylap: {@code Pictures ADDRESS FOLDER}. */
public final class Pictures {
    private record Format(String name, int width, int height, ColorScheme scheme) {}

    private static final Format[] FORMATS = {
        new Format("1440-light", 1440, 900, ColorScheme.LIGHT),
        new Format("1440-dark", 1440, 900, ColorScheme.DARK),
        new Format("360-light", 360, 740, ColorScheme.LIGHT),
        new Format("360-dark", 360, 740, ColorScheme.DARK)
    };

    private final Path folder;
    private final String address;

    private Pictures(String address, Path folder) {
        this.address = address;
        this.folder = folder;
    }

    public static void main(String[] args) {
        Pictures pictures = new Pictures(args[0], Path.of(args[1]));
        try (Chromium chromium = new Chromium()) {
            for (Format format : FORMATS) {
                Page page = chromium.page(format.width(), format.height(), format.scheme());
                page.onPageError(error -> System.err.println("page error: " + error));
                pictures.take(page, format.name());
                page.close();
            }
        }
    }

    private void take(Page page, String format) {
        SignInPage.of(address).enterAsSample(page, "ines");
        page.locator("week-sheet table").waitFor();
        Locator firstDay = page.locator("week-sheet .days button").first();
        if (firstDay.isVisible()) firstDay.click();
        Locator blocks = page.locator("week-sheet .block").locator("visible=true");
        blocks.first().waitFor();
        shot(page, "week-" + format, true);
        blocks.first().focus();
        page.locator("visit-slip h3").waitFor();
        shot(page, "visit-" + format, false);
        go(page, "Walls");
        page.locator("facade-drawing .opening").first().waitFor();
        shot(page, "walls-" + format, true);
        go(page, "Open hours");
        page.locator("forecast-strip .row").first().waitFor();
        shot(page, "hours-" + format, false);
        go(page, "Job folders");
        page.getByText("Job folders so far").first().waitFor();
        shot(page, "folders-" + format, false);
        go(page, "Crews");
        page.locator(".days li").first().waitFor();
        shot(page, "crews-" + format, false);
        go(page, "Rules");
        page.locator(".rules li").first().waitFor();
        shot(page, "rules-" + format, false);
    }

    private static void go(Page page, String screen) {
        page.getByRole(
                        AriaRole.LINK,
                        new Page.GetByRoleOptions().setName(screen).setExact(true))
                .click();
    }

    private void shot(Page page, String name, boolean whole) {
        page.waitForTimeout(600);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(folder.resolve(name + ".png"))
                .setFullPage(whole));
        System.out.println(name);
    }
}
