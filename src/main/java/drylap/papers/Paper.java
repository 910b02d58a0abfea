package drylap.papers;

import drylap.kernel.Coded;

/** What is in the printer; points of 1/72 inch. ISO 216 and ANSI/ASME Y14.1. */
public enum Paper implements Coded {
    A4("a4", 595, 842),
    LETTER("letter", 612, 792);

    private final String code;
    private final float width;
    private final float height;

    Paper(String code, float width, float height) {
        this.code = code;
        this.width = width;
        this.height = height;
    }

    @Override
    public String code() {
        return code;
    }

    float width() {
        return width;
    }

    float height() {
        return height;
    }
}
