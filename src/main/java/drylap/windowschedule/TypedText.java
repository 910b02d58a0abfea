package drylap.windowschedule;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;

/** Text as people and office programs type it, brought to plain characters. */
final class TypedText {
    private static final Map<String, String> GLYPHS = Map.ofEntries(
            Map.entry("\u00bd", "1/2"),
            Map.entry("\u00bc", "1/4"),
            Map.entry("\u00be", "3/4"),
            Map.entry("\u215b", "1/8"),
            Map.entry("\u215c", "3/8"),
            Map.entry("\u215d", "5/8"),
            Map.entry("\u215e", "7/8"),
            Map.entry("\u2153", "1/3"),
            Map.entry("\u2154", "2/3"));

    private TypedText() {}

    /** In lower case, with straight quotes, hyphens, slashes and single spaces. */
    static String plain(String text) {
        String plain = text;
        for (var glyph : GLYPHS.entrySet()) plain = plain.replace(glyph.getKey(), " " + glyph.getValue() + " ");
        return plain.replaceAll("[\u2032\u2018\u2019\u02b9\u00b4`]", "'")
                .replaceAll("[\u2033\u201c\u201d\u02ba]|''", "\"")
                .replaceAll("[\u2010-\u2015\u2212]", "-")
                .replaceAll("[\u2044\u2215]", "/")
                .replace('\u00d7', 'x')
                .replaceAll("[\\s\u00a0\u2000-\u200b\u202f]+", " ")
                .replaceAll("(?<=\\d) ?/ ?(?=\\d)", "/")
                .replaceAll(" (?=[\"'])", "")
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    /** For comparing names: words of letters and digits without accents, in lower case, one space between. */
    static String words(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9#]+", " ")
                .strip();
    }
}
