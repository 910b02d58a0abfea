package drylap.sites;

import drylap.speech.Saying;
import drylap.speech.Unfit;
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

    private static final String LINES = "has {0} lines";
    private static final String CHARACTERS = "has {0} characters in line {1}";
    private static final String CONTROL = "holds a control character in line {0}";
    private static final String OTHERWISE = "would be read otherwise than it is written in line {0}";
    private static final String UP_TO =
            "an address of up to {0} lines of up to {1} characters, parted by line breaks or ;";

    /** All that is said of addresses, for whoever reads a message back. */
    public static final List<String> SENTENCES = List.of(LINES, CHARACTERS, CONTROL, OTHERWISE, UP_TO);

    /** What would be accepted, for messages. */
    public static final Saying ACCEPTED = Saying.of(UP_TO, MOST_LINES, LONGEST_LINE);

    private static final Pattern BETWEEN = Pattern.compile("[;\\n\\r]+");
    private static final Pattern BLANKS = Pattern.compile("[ \\t\\u00A0]+");

    public static final StreetAddress NONE = new StreetAddress(List.of());

    public StreetAddress {
        lines = List.copyOf(lines);
        fault(lines).ifPresent(fault -> {
            throw new Unfit(Saying.of("the address {0}; accepted: {1}", fault, ACCEPTED));
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

    /** What is wrong with a text. */
    public static Optional<Saying> fault(String text) {
        return fault(split(text));
    }

    private static List<String> split(String text) {
        return BETWEEN.splitAsStream(text)
                .map(line -> BLANKS.matcher(line).replaceAll(" ").strip())
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private static Optional<Saying> fault(List<String> lines) {
        if (lines.size() > MOST_LINES) return Optional.of(Saying.of(LINES, lines.size()));
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.length() > LONGEST_LINE) return Optional.of(Saying.of(CHARACTERS, line.length(), i + 1));
            if (line.codePoints().anyMatch(Character::isISOControl)) return Optional.of(Saying.of(CONTROL, i + 1));
            if (!split(line).equals(List.of(line))) return Optional.of(Saying.of(OTHERWISE, i + 1));
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
