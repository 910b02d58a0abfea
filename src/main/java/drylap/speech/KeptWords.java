package drylap.speech;

import java.time.DateTimeException;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Sentences that are written down in English once they are said, and are read back to be said to others. Whoever writes takes them from
 * the same list.
 */
public final class KeptWords {
    private static final String PLACE = "\\{\\d\\}";
    /** How far parts are sentences within sentences; what lies deeper, as in a text that was made up to break this, stays as it is. */
    private static final int DEEPEST = 12;
    /**
     * Longer ones, such as lists of all that is accepted, have one place at most: where several places of a longer one might be takes its length to
     * the power of their number.
     */
    static final int LONGEST_OF_SEVERAL = 600;

    private static final List<DateTimeFormatter> TIMES = Stream.of("EEE d MMM HH:mm", "EEE d MMM")
            .map(form -> DateTimeFormatter.ofPattern(form, Locale.ENGLISH))
            .toList();

    /** @param letters of its own, without the places */
    private record Form(String sentence, Pattern written, int letters, int places) {
        static Form of(String sentence) {
            String[] own = sentence.replace("''", "'").split(PLACE, -1);
            String written = Arrays.stream(own).map(Pattern::quote).collect(Collectors.joining("(.+?)"));
            return new Form(
                    sentence,
                    Pattern.compile(written, Pattern.DOTALL),
                    Arrays.stream(own).mapToInt(String::length).sum(),
                    own.length - 1);
        }

        boolean mayFit(String kept) {
            return places <= 1 || kept.length() <= LONGEST_OF_SEVERAL;
        }
    }

    private final List<Form> forms;

    /** @param sentences with their places in order, each once, and words that stand in such places */
    public KeptWords(Stream<String> sentences) {
        forms = sentences
                .map(Form::of)
                .sorted(Comparator.comparingInt(Form::letters).reversed())
                .toList();
    }

    /** The sentence that fits with most letters of its own; other words, as of something made elsewhere, stay as they are. */
    public Saying read(String kept) {
        return find(kept, 0).orElseGet(() -> Saying.asItIs(kept));
    }

    private Optional<Saying> find(String kept, int depth) {
        if (depth > DEEPEST) return Optional.empty();
        return forms.stream()
                .flatMap(form -> fitting(form, kept, depth).stream())
                .findFirst();
    }

    private Optional<Saying> fitting(Form form, String kept, int depth) {
        if (!form.mayFit(kept)) return Optional.empty();
        Matcher found = form.written().matcher(kept);
        if (!found.matches()) return Optional.empty();
        return Optional.of(new Saying(
                form.sentence(),
                IntStream.rangeClosed(1, found.groupCount())
                        .mapToObj(found::group)
                        .map(part -> part(part, depth + 1))
                        .toList()));
    }

    /** A day, an hour, a sentence of the list again, or data. */
    private Object part(String written, int depth) {
        return TIMES.stream()
                .flatMap(form -> time(form, written).stream())
                .findFirst()
                .or(() -> find(written, depth))
                .orElse(written);
    }

    private static Optional<Object> time(DateTimeFormatter form, String written) {
        try {
            return Optional.of(new Part.When(form.parse(written)));
        } catch (DateTimeException other) {
            return Optional.empty();
        }
    }
}
