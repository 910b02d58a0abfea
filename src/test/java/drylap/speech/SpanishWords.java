package drylap.speech;

import drylap.kernel.Language;
import java.time.DayOfWeek;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Tells what on a Spanish screen or paper is no Spanish of ours: whole English sentences of the catalogue, and every word that
 * neither the Spanish words nor the data hold. So that text which never came to the catalogue shows too.
 */
public final class SpanishWords {
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    /** The same in both languages: the house, units, formats. */
    private static final List<String> NEITHER = List.of(
            "Drylap",
            "mm",
            "km",
            "ml",
            "min",
            "Pa",
            "PDF",
            "JPEG",
            "PNG",
            "WebP",
            "JSON",
            "kB",
            "MB",
            "English",
            "Español",
            "Language");

    private final Map<String, String> sentences = new TreeMap<>();
    private final Set<String> known = new HashSet<>();

    /** @param data names and whatever else people typed in */
    public SpanishWords(List<String> data) {
        Catalogue.files(Language.SPANISH).forEach(file -> sentences.putAll(Catalogue.read(file)));
        sentences.values().forEach(this::know);
        data.forEach(this::know);
        NEITHER.forEach(this::know);
        var locale = Language.SPANISH.locale();
        for (var style : List.of(TextStyle.SHORT, TextStyle.FULL))
            Arrays.stream(Month.values()).forEach(month -> know(month.getDisplayName(style, locale)));
        Arrays.stream(DayOfWeek.values()).forEach(day -> know(day.getDisplayName(TextStyle.SHORT, locale)));
    }

    private void know(String text) {
        words(text).forEach(known::add);
    }

    private static List<String> words(String text) {
        return WORD.matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .toList();
    }

    /** What is wrong with a text, each with the text itself; empty: it is Spanish or data. */
    public List<String> strange(String text) {
        if (sentences.containsKey(text.strip())) return List.of("English: " + text.strip());
        return words(text).stream()
                .filter(word -> !known.contains(word))
                .map(word -> "\"%s\" in: %s".formatted(word, text.strip()))
                .toList();
    }
}
