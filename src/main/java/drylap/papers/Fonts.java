package drylap.papers;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.openpdf.text.pdf.BaseFont;

/** Liberation Sans (SIL Open Font License), embedded as far as it is used: Latin, Greek and Cyrillic. */
enum Fonts {
    REGULAR("Regular"),
    BOLD("Bold"),
    ITALIC("Italic");

    private static final int UNKNOWN = '?';
    /** Lap sections mark with it where water gets in; the font has no such letter. */
    private static final char CROSS = '✕';

    private final BaseFont font;

    Fonts(String cut) {
        try {
            font = BaseFont.createFont(
                    "liberation/LiberationSans-%s.ttf".formatted(cut), BaseFont.IDENTITY_H, BaseFont.EMBEDDED);
        } catch (IOException missing) {
            throw new UncheckedIOException("the font of papers is not in the application", missing);
        }
    }

    BaseFont font() {
        return font;
    }

    float width(String words, float size) {
        return font.getWidthPoint(words, size);
    }

    /** On one line; what the font has no letter for becomes a question mark rather than nothing. */
    String printable(String words) {
        var known = new StringBuilder();
        words.replaceAll("\\s", " ")
                .replace(CROSS, '×')
                .codePoints()
                .map(point -> font.charExists(point) ? point : UNKNOWN)
                .forEach(known::appendCodePoint);
        return known.toString();
    }

    /** In lines that are no wider; a word that is wider by itself is broken. */
    List<String> wrap(String words, float size, float width) {
        List<String> lines = new ArrayList<>();
        var line = new StringBuilder();
        for (String word : printable(words).split(" +")) {
            String joined = line.isEmpty() ? word : line + " " + word;
            if (width(joined, size) <= width) {
                line.setLength(0);
                line.append(joined);
                continue;
            }
            if (!line.isEmpty()) lines.add(line.toString());
            line.setLength(0);
            // only words that are wider by themselves are looked at letter by letter
            if (width(word, size) <= width) line.append(word);
            else broken(word, line, lines, size, width);
        }
        if (!line.isEmpty() || lines.isEmpty()) lines.add(line.toString());
        return lines;
    }

    private void broken(String word, StringBuilder line, List<String> lines, float size, float width) {
        word.codePoints().forEach(point -> {
            if (!line.isEmpty() && width(line + Character.toString(point), size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.appendCodePoint(point);
        });
    }
}
