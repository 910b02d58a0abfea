package drylap.intake.csv;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The columns of one file of the contract, in the order in which they are written. */
public record Header(String file, List<String> columns, Set<String> optional) {
    /** @param columns as the contract writes them: a question mark ends the name of one that may be absent or empty */
    public static Header of(String file, String... columns) {
        Set<String> optional = new LinkedHashSet<>();
        for (String column : columns) if (column.endsWith("?")) optional.add(bare(column));
        return new Header(file, Arrays.stream(columns).map(Header::bare).toList(), optional);
    }

    private static String bare(String column) {
        return column.endsWith("?") ? column.substring(0, column.length() - 1) : column;
    }

    public Header named(String otherFile) {
        return new Header(otherFile, columns, optional);
    }

    /** For files in which an optional column would be blank throughout: readers of old do not know it. */
    public Header without(String column) {
        return new Header(
                file, columns.stream().filter(one -> !one.equals(column)).toList(), optional);
    }

    public List<String> required() {
        return columns.stream().filter(column -> !optional.contains(column)).toList();
    }

    public String text() {
        return String.join(",", columns);
    }
}
