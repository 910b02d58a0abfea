package drylap.intake;

/**
 * One thing wrong with a folder: where it stands, what is wrong, and what would be accepted.
 *
 * @param line the line of the file, from 1; 0 where the whole file is meant
 * @param column blank where the whole line or file is meant
 * @param value as it stands in the file; blank where nothing stands there
 */
public record Problem(String file, int line, String column, String wrong, String value, String accepted) {
    private static final int LONGEST_SHOWN = 80;

    public static Problem ofFile(String file, String wrong, String accepted) {
        return new Problem(file, 0, "", wrong, "", accepted);
    }

    @Override
    public String toString() {
        return file
                + (line > 0 ? ":" + line : "")
                + (column.isEmpty() ? "" : " " + column)
                + ": "
                + wrong
                + (value.isEmpty() ? "" : " (" + shown() + ")")
                + " – "
                + accepted
                + " is accepted";
    }

    /** A value may be anything at all, so it is cut and its control characters are made visible. */
    public String shown() {
        int end = Math.min(value.length(), LONGEST_SHOWN);
        String cut = value.codePoints()
                .limit(end)
                .mapToObj(c -> Character.isISOControl(c) ? "\\u%04x".formatted(c) : Character.toString(c))
                .collect(java.util.stream.Collectors.joining());
        return value.codePointCount(0, value.length()) > LONGEST_SHOWN ? cut + "…" : cut;
    }
}
