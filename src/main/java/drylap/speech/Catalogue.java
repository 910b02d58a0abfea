package drylap.speech;

import drylap.kernel.Language;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** The sentences of a language, by the English ones for which they stand. English itself needs none. */
final class Catalogue {
    private static final Map<Language, Map<String, String>> KNOWN =
            Map.of(Language.ENGLISH, Map.of(), Language.SPANISH, read(Language.SPANISH));

    private Catalogue() {}

    /** Both sides share words: what the page's own scripts say stands in the first. */
    static List<String> files(Language language) {
        return List.of("/speech/page.%s.json".formatted(language.code()), "/speech/%s.json".formatted(language.code()));
    }

    static String in(Language language, String english) {
        return KNOWN.getOrDefault(language, Map.of()).getOrDefault(english, english);
    }

    private static Map<String, String> read(Language language) {
        Map<String, String> all = new HashMap<>();
        files(language).forEach(file -> all.putAll(read(file)));
        return Map.copyOf(all);
    }

    static Map<String, String> read(String file) {
        try (InputStream in = Catalogue.class.getResourceAsStream(file)) {
            if (in == null) throw new IllegalStateException("this Drylap was built without " + file);
            return JsonMapper.shared().readValue(in, new TypeReference<Map<String, String>>() {});
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
