package drylap.windowschedule;

import drylap.assembly.Method;
import drylap.kernel.Coded;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A method as a schedule writes it: {@code A1}, {@code Method B}, {@code b-1}. */
final class MethodText {
    private static final Pattern SHAPE = Pattern.compile("(?:METHOD |M)?([AB])[- ]?(1?)");

    private MethodText() {}

    /** The letter of a method that has no number. */
    static Optional<String> bareLetter(String text) {
        Matcher found = SHAPE.matcher(text.strip().toUpperCase(Locale.ROOT));
        return found.matches() && found.group(2).isEmpty() ? Optional.of(found.group(1)) : Optional.empty();
    }

    /** None where it is no method, or a bare letter of which nobody said what it means. */
    static Optional<Method> read(String text, @Nullable LetterMeaning letters) {
        Matcher found = SHAPE.matcher(text.strip().toUpperCase(Locale.ROOT));
        if (!found.matches()) return Optional.empty();
        if (!found.group(2).isEmpty()) return Coded.parse(Method.class, found.group(1) + "1");
        return letters == null ? Optional.empty() : letters.of(found.group(1));
    }
}
