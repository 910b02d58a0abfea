package drylap.sites;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where a site is found by road: lines of free text, the first one uppermost, since postal addresses differ from land to land.
 * None: not told. Six lines are more than any sheet needs (common practice, no source).
 */
public record StreetAddress(List<String> lines) {
    private static final int MOST_LINES = 6;
    private static final int LONGEST_LINE = 80;

    /** What would be accepted, for messages. */
    public static final String ACCEPTED =
            "an address of up to %d lines of up to %d characters, parted by line breaks or ;"
                    .formatted(MOST_LINES, LONGEST_LINE);

    private static final Pattern BETWEEN = Pattern.compile("[;\\n\\r]+");
    private static final Pattern BLANKS = Pattern.compile("[ \\t\\u00A0]+");

    public static final StreetAddress NONE = new StreetAddress(List.of());

    public StreetAddress {
        lines = List.copyOf(lines);
        fault(lines).ifPresent(fault -> {
            throw new IllegalArgumentException("the address %s; accepted: %s".formatted(fault, ACCEPTED));
        });
    }

    /**
     * Reads what somebody typed or a file holds; blank lines go.
     *
     * @throws IllegalArgumentException where {@link #fault(String)} finds one
     */
    public static StreetAddress read(String text) {
        return new StreetAddress(split(text));
    }

    /** What is wrong with a text, in words. */
    public static Optional<String> fault(String text) {
        return fault(split(text));
    }

    private static List<String> split(String text) {
        return BETWEEN.splitAsStream(text)
                .map(line -> BLANKS.matcher(line).replaceAll(" ").strip())
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private static Optional<String> fault(List<String> lines) {
        if (lines.size() > MOST_LINES) return Optional.of("has %d lines".formatted(lines.size()));
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.length() > LONGEST_LINE)
                return Optional.of("has %d characters in line %d".formatted(line.length(), i + 1));
            if (line.codePoints().anyMatch(Character::isISOControl))
                return Optional.of("holds a control character in line %d".formatted(i + 1));
            if (!split(line).equals(List.of(line)))
                return Optional.of("would be read otherwise than it is written in line %d".formatted(i + 1));
        }
        return Optional.empty();
    }

    public boolean known() {
        return !lines.isEmpty();
    }

    /** In one line, as a reader says it. */
    public String inOneLine() {
        return String.join(", ", lines);
    }

    /** Line below line. */
    public String below() {
        return String.join("\n", lines);
    }
}
