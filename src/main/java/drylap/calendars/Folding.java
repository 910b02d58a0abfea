package drylap.calendars;

import java.util.stream.Collectors;

/**
 * Folds the lines of a calendar at 75 octets of UTF-8 (RFC 5545, 3.1), never within a character. The library that writes them
 * counts characters instead, of which a name in another script has fewer than octets.
 */
final class Folding {
    private static final int MOST_OCTETS = 75;

    private Folding() {}

    /** @param text lines ended by CR LF that are not folded, or folded where a line goes on after CR LF and a space */
    static String fold(String text) {
        return text.replace("\r\n ", "").lines().map(Folding::line).collect(Collectors.joining());
    }

    private static String line(String line) {
        var folded = new StringBuilder();
        int octets = 0;
        for (int point : line.codePoints().toArray()) {
            int more = octets(point);
            if (octets + more > MOST_OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.appendCodePoint(point);
            octets += more;
        }
        return folded.append("\r\n").toString();
    }

    private static int octets(int point) {
        return point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
    }
}
