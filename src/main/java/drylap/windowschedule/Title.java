package drylap.windowschedule;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The title of a column as it stands in the header, over however many rows. */
record Title(String text) {
    private static final Set<String> PASSED_OVER = Set.of("of", "the", "in", "at", "above", "finish");
    private static final Pattern BRACKETED = Pattern.compile("[(\\[]\\s*([^)\\]]*?)\\.?\\s*[)\\]]");
    private static final Pattern LAST_WORD = Pattern.compile(".*[\\s,/]([a-z]+)\\.?");
    private static final Set<String> UNITS_WITHOUT_BRACKETS = Set.of("mm", "cm", "inches", "inch", "in");

    /** The unit that the title says for its column: in brackets, or as its last word. */
    Optional<LengthUnit> unit() {
        String plain = TypedText.plain(text);
        Matcher bracketed = BRACKETED.matcher(plain);
        while (bracketed.find()) {
            Optional<LengthUnit> said = LengthUnit.spelt(bracketed.group(1).strip());
            if (said.isPresent()) return said;
        }
        Matcher last = LAST_WORD.matcher(plain);
        return last.matches() && UNITS_WITHOUT_BRACKETS.contains(last.group(1))
                ? LengthUnit.spelt(last.group(1))
                : Optional.empty();
    }

    /** How far down its list of titles each field has this one; fields that do not have it are left out. */
    Map<Field, Integer> ranks() {
        return Known.RANKS.getOrDefault(words(text), Map.of());
    }

    /** The titles of all fields as sets of words, worked out once. */
    private static final class Known {
        static final Map<Set<String>, Map<Field, Integer>> RANKS = new HashMap<>();

        static {
            Field.all().forEach(field -> {
                for (int rank = 0; rank < field.titles().size(); rank++)
                    RANKS.computeIfAbsent(words(field.titles().get(rank)), _ -> new EnumMap<>(Field.class))
                            .putIfAbsent(field, rank);
            });
        }
    }

    /** Whether a title of both sides names the height first. */
    boolean heightFirst() {
        return TypedText.words(text).matches(".*\\bh(eight|t|gt)?\\b.*\\bw(idth|d)?\\b.*");
    }

    private static Set<String> words(String text) {
        String plain = BRACKETED
                .matcher(TypedText.plain(text).replaceAll("\\b([a-z])\\.(?=[a-z]\\.?)", "$1"))
                .replaceAll(" ");
        Set<String> words = java.util.Arrays.stream(TypedText.words(plain).split(" "))
                .collect(Collectors.toCollection(TreeSet::new));
        words.removeAll(PASSED_OVER);
        if (words.size() > 1) words.removeAll(UNITS_WITHOUT_BRACKETS);
        return words;
    }
}
