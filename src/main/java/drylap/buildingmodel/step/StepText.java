package drylap.buildingmodel.step;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a string: its escapes are those of ISO 10303-21, 6.4.3 (from memory). Bytes beyond ASCII, which older editions do not have, are
 * UTF-8, or else ISO 8859-1. What looks like an escape and is none is kept as it stands, so that a person sees it.
 */
final class StepText {
    private static final Pattern ESCAPE = Pattern.compile("""
            \\\\(?:(?<twice>\\\\)\
            |X\\\\(?<latin>[0-9A-Fa-f]{2})\
            |X2\\\\(?<two>(?:[0-9A-Fa-f]{4})+)\\\\X0\\\\\
            |X4\\\\(?<four>(?:[0-9A-Fa-f]{8})+)\\\\X0\\\\\
            |S\\\\(?<upper>.)\
            |P(?<page>[A-I])\\\\\
            |[NF]\\\\)""");
    private static final int HALF_A_PAGE = 128;

    private StepText() {}

    /** @param raw between the quotes, doubled quotes made single */
    static String of(byte[] raw) {
        String plain = plain(raw);
        return plain.indexOf('\\') < 0 ? plain : unescaped(plain);
    }

    private static String plain(byte[] raw) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(raw))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            return new String(raw, StandardCharsets.ISO_8859_1);
        }
    }

    private static String unescaped(String text) {
        Matcher escape = ESCAPE.matcher(text);
        var said = new StringBuilder();
        char page = 'A';
        int from = 0;
        while (escape.find()) {
            said.append(text, from, escape.start());
            from = escape.end();
            String chosen = escape.group("page");
            if (chosen != null) page = chosen.charAt(0);
            else said.append(meant(escape, page));
        }
        return said.append(text, from, text.length()).toString();
    }

    private static String meant(Matcher escape, char page) {
        String latin = escape.group("latin");
        String two = escape.group("two");
        String four = escape.group("four");
        String upper = escape.group("upper");
        if (escape.group("twice") != null) return "\\";
        if (latin != null) return Character.toString(Integer.parseInt(latin, 16));
        if (two != null) return new String(hex(two), StandardCharsets.UTF_16BE);
        if (four != null) return new String(hex(four), Charset.forName("UTF-32BE"));
        return upper == null ? "" : upper(upper.charAt(0), page);
    }

    private static byte[] hex(String digits) {
        return java.util.HexFormat.of().parseHex(digits);
    }

    /** The character with its eighth bit set, in the part of ISO 8859 that is chosen. */
    private static String upper(char one, char page) {
        if (one >= HALF_A_PAGE) return "\\S\\" + one;
        byte[] single = {(byte) (one + HALF_A_PAGE)};
        return new String(single, Charset.forName("ISO-8859-" + (page - 'A' + 1)));
    }
}
