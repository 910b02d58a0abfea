package drylap.speech;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every sentence that the page's own scripts hand to be said, or mark to be said later. */
final class SaidInPage {
    private static final Pattern SAID =
            Pattern.compile("\\b(?:say|words|speechOf\\(this\\)|say\\(\\)|this\\.say|sayIn\\(this\\.language\\))\\(\\s*"
                    + "(?:'((?:[^'\\\\]|\\\\.)*)'|\"((?:[^\"\\\\]|\\\\.)*)\")");

    private SaidInPage() {}

    static Set<String> under(Path root) {
        Set<String> said = new TreeSet<>();
        try (Stream<Path> scripts = Files.list(root)) {
            for (Path script : scripts.filter(SaidInPage::isOurs).toList()) {
                var found = SAID.matcher(Files.readString(script));
                while (found.find()) said.add(found.group(1) == null ? found.group(2) : found.group(1));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return said;
    }

    private static boolean isOurs(Path script) {
        String name = script.getFileName().toString();
        return name.endsWith(".ts") && !name.endsWith(".test.ts");
    }
}
