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

    /** All codes of a type, for messages that say what would be accepted. */
    static <E extends Enum<E> & Coded> String codes(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Coded::code).collect(Collectors.joining(", "));
    }
}
