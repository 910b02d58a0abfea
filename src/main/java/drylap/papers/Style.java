package drylap.papers;

import java.awt.Color;
import java.util.List;

/** How words look. */
record Style(Fonts font, float size, Color colour) {
    static final Color INK = new Color(0x17202b);
    private static final Color ALARM = new Color(0xb3201a);

    static final Style TITLE = new Style(Fonts.BOLD, 17, INK);
    static final Style HEAD = new Style(Fonts.BOLD, 13, INK);
    static final Style TEXT = new Style(Fonts.REGULAR, 10.5f, INK);
    static final Style STRONG = new Style(Fonts.BOLD, 10.5f, INK);
    static final Style WARNING = new Style(Fonts.BOLD, 10.5f, ALARM);
    static final Style SMALL = new Style(Fonts.REGULAR, 8.5f, INK);

    float leading() {
        return size * 1.28f;
    }

    List<String> wrap(String words, float width) {
        return font.wrap(words, size, width);
    }

    float height(String words, float width) {
        return wrap(words, width).size() * leading();
    }
}
