package drylap.intake.csv;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Which numbers a cell may hold; both ends are accepted. */
public record Range(String unit, double least, double most, boolean whole) {
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,18}");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,300}(\\.\\d{1,400})?([eE][+-]?\\d{1,3})?");
    private static final Pattern PLAIN = Pattern.compile("[+-]?\\d{1,12}(\\.\\d{1,12})?");

    /** What is wrong with the value, or null. */
    @Nullable
    String fault(String value) {
        if (value.isBlank()) return "is blank";
        if (!NUMBER.matcher(value).matches()) return whole ? "is not a whole number" : "is not a number";
        double number = Double.parseDouble(value);
        if (!Double.isFinite(number)) return "is not finite";
        if (whole && !WHOLE.matcher(value).matches()) return "is not a whole number";
        if (number < 0 && least >= 0) return "is negative";
        if (number < least) return "is too small";
        return number > most ? "is too large" : null;
    }

    /** As {@link #fault}, for decimals without an exponent and with at most twelve digits after the point. */
    @Nullable
    String faultOfPlain(String value) {
        String fault = fault(value);
        return fault == null && !PLAIN.matcher(value).matches() ? "is not a plain decimal number" : fault;
    }

    String text() {
        return "a %s%s from %s to %s"
                .formatted(
                        whole ? "whole number" : "number", unit.isEmpty() ? "" : " of " + unit, end(least), end(most));
    }

    private static String end(double end) {
        return BigDecimal.valueOf(end).stripTrailingZeros().toPlainString();
    }
}
