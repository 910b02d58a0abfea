package drylap.planning;

import drylap.speech.Part;
import drylap.speech.Saying;
import java.time.DateTimeException;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The sentences with which a plan says why a task is left out of it. A plan keeps them in English; they are read back to be said to others. */
public enum LeftOut {
    NO_METHOD("no window crew is trained for method {0}"),
    NO_TRADE("there is no crew of the trade {0}"),
    CREWS_TAKEN("every crew that could do it is taken until {0}"),
    MUST_END("must end by {0}"),
    COMES_LATE("delivered on {0}, and no crew has open time after that before {1}"),
    NO_HOUR("needs {0} min in a row between {1} and {2}"),
    WAITS_FOR_INSTALL("waits for the install of {0}, which is not planned"),
    WAITS_FOR_TEST("waits for the test of {0}, which is not planned"),
    WAITS_FOR_WRAP("waits for the wrap of {0}, which is not planned"),
    WAITS_FOR_CLAD("waits for the clad of {0}, which is not planned"),
    RING("crews wait for each other in a ring");

    private static final List<DateTimeFormatter> TIMES = Stream.of("EEE d MMM HH:mm", "EEE d MMM")
            .map(form -> DateTimeFormatter.ofPattern(form, Locale.ENGLISH))
            .toList();

    private final String sentence;
    private final Pattern written;

    LeftOut(String sentence) {
        this.sentence = sentence;
        written = Pattern.compile(Arrays.stream(sentence.split("\\{\\d\\}", -1))
                .map(Pattern::quote)
                .reduce((before, after) -> before + "(.+?)" + after)
                .orElse(""));
    }

    /** As a plan keeps it. */
    public String with(Object... parts) {
        return Saying.of(sentence, parts).words();
    }

    /** What was written, to be said in other languages; other words, as of a plan made elsewhere, stay as they are. */
    public static Saying read(String detail) {
        return Arrays.stream(values())
                .flatMap(one -> one.parts(detail).stream())
                .findFirst()
                .orElseGet(() -> Saying.asItIs(detail));
    }

    private Optional<Saying> parts(String detail) {
        Matcher found = written.matcher(detail);
        if (!found.matches()) return Optional.empty();
        return Optional.of(new Saying(
                sentence,
                IntStream.rangeClosed(1, found.groupCount())
                        .mapToObj(found::group)
                        .map(this::part)
                        .toList()));
    }

    private Object part(String written) {
        if (this == NO_TRADE) return Saying.of(written);
        return TIMES.stream()
                .flatMap(form -> time(form, written).stream())
                .findFirst()
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
