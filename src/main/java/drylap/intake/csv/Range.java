package drylap.intake.csv;

import drylap.intake.FolderWords;
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
        if (value.isBlank()) return FolderWords.BLANK.with();
        if (!NUMBER.matcher(value).matches()) return (whole ? FolderWords.NOT_WHOLE : FolderWords.NOT_NUMBER).with();
        double number = Double.parseDouble(value);
        if (!Double.isFinite(number)) return FolderWords.NOT_FINITE.with();
        if (whole && !WHOLE.matcher(value).matches()) return FolderWords.NOT_WHOLE.with();
        if (number < 0 && least >= 0) return FolderWords.NEGATIVE.with();
        if (number < least) return FolderWords.TOO_SMALL.with();
        return number > most ? FolderWords.TOO_LARGE.with() : null;
    }

    /** As {@link #fault}, for decimals without an exponent and with at most twelve digits after the point. */
    @Nullable
    String faultOfPlain(String value) {
        String fault = fault(value);
        return fault == null && !PLAIN.matcher(value).matches() ? FolderWords.NOT_PLAIN.with() : fault;
    }

    String text() {
        if (unit.isEmpty()) return (whole ? FolderWords.WHOLE : FolderWords.NUMBER).with(end(least), end(most));
        return (whole ? FolderWords.WHOLE_OF : FolderWords.NUMBER_OF).with(unit, end(least), end(most));
    }

    private static String end(double end) {
        return BigDecimal.valueOf(end).stripTrailingZeros().toPlainString();
    }
}
