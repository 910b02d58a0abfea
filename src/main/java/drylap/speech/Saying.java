package drylap.speech;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Something to be said later, to whoever reads it: an English sentence with places such as {@code {0}} or
 * {@code {0, plural, one {# day} other {# days}}} (the form of ICU's messages), and what stands in them. A part that is a saying
 * itself is said in the same language; any other stands as it is.
 */
public record Saying(String english, List<Object> parts) implements Part {
    public Saying {
        parts = List.copyOf(parts);
    }

    public static Saying of(String english, Object... parts) {
        return new Saying(english, List.of(parts));
    }

    /** A name or a number, the same in every language. */
    public static Saying asItIs(Object data) {
        return Saying.of("{0}", data);
    }

    /** One after the other, with the same between each two. */
    public static Saying list(String between, List<Saying> sayings) {
        String places =
                IntStream.range(0, sayings.size()).mapToObj("{%d}"::formatted).collect(Collectors.joining(between));
        return new Saying(places, List.copyOf(sayings));
    }

    /** In English, as logs, commands and the history have it. */
    public String words() {
        return Speech.ENGLISH.it(this);
    }

    @Override
    public String in(Speech speech) {
        return speech.it(this);
    }

    @Override
    public String toString() {
        return words();
    }
}
