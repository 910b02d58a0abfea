package drylap.kernel;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** An enum constant with the code that files and tables write for it. */
public interface Coded {
    String code();

    static <E extends Enum<E> & Coded> Optional<E> parse(Class<E> type, String code) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> constant.code().equals(code))
                .findFirst();
    }

    /** The constant of a code that is known to be one, such as a table's.
     *
     * @throws IllegalArgumentException where it is none
     */
    static <E extends Enum<E> & Coded> E of(Class<E> type, String code) {
        return parse(type, code)
                .orElseThrow(() -> new IllegalArgumentException("%s is none of %s".formatted(code, codes(type))));
    }

    /** All codes of a type, for messages that say what would be accepted. */
    static <E extends Enum<E> & Coded> String codes(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Coded::code).collect(Collectors.joining(", "));
    }
}
