package drylap.ui;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What axe-core finds on a page, by the rules of WCAG 2.1, levels A and AA. */
final class Axe {
    private static final Path SCRIPT = Path.of("node_modules/axe-core/axe.min.js");

    private Axe() {}

    /** Each broken rule with the elements that break it. */
    static List<?> trouble(Page page) {
        return run(page, List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa"));
    }

    /** The same of the rules among them that look at colours. */
    static List<?> troubleWithColours(Page page) {
        return run(page, List.of("color-contrast", "link-in-text-block"));
    }

    private static List<?> run(Page page, List<String> only) {
        if (!(Boolean) page.evaluate("'axe' in window")) page.evaluate(script());
        return (List<?>) page.evaluate("""
                async only => (await axe.run(document, {runOnly: only, resultTypes: ['violations']}))
                    .violations.map(rule => rule.id + ': ' + rule.nodes.map(node => node.target.flat().join(' ')).join(', '))""", only);
    }

    /** Given to the browser by the side: a script element that is not the page's own does not run in it. */
    private static String script() {
        try {
            return Files.readString(SCRIPT);
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** How many pixels of a page must be scrolled to sideways. */
    static int sideways(Page page) {
        return (Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth");
    }
}
