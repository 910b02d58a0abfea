package drylap.speech;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.SimpleFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Sentences with places, taken apart once. */
@FunctionalInterface
interface Pattern {
    Map<Key, Pattern> KNOWN = new ConcurrentHashMap<>();

    record Key(Locale locale, String text) {}

    String with(Object[] parts);

    static Pattern of(Locale locale, String text) {
        return KNOWN.computeIfAbsent(new Key(locale, text), Pattern::taken);
    }

    private static Pattern taken(Key key) {
        if (!key.text().contains("{")) return _ -> key.text();
        if (key.text().contains(", plural,")) return plural(key);
        var simple = SimpleFormatter.compile(key.text());
        return parts -> {
            var words = new CharSequence[parts.length];
            for (int i = 0; i < parts.length; i++) words[i] = String.valueOf(parts[i]);
            return simple.format(words);
        };
    }

    /** A message format is no thread's but one's. */
    private static Pattern plural(Key key) {
        var format = new MessageFormat(key.text(), key.locale());
        return parts -> ((MessageFormat) format.clone()).format(parts);
    }
}
