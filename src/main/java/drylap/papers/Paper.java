package drylap.papers;

import drylap.kernel.Coded;
import java.util.Optional;

/** What is in the printer; points of 1/72 inch. ISO 216 and ANSI/ASME Y14.1. The large ones lie across. */
public enum Paper implements Coded {
    A4("a4", 595, 842),
    LETTER("letter", 612, 792),
    A3("a3", 1191, 842),
    TABLOID("tabloid", 1224, 792);

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

    /** For a wall, not for a hand. */
    public boolean large() {
        return width > height;
    }

    /** One that goes into a hand; empty for any other word. */
    public static Optional<Paper> inHand(String code) {
        return Coded.parse(Paper.class, code).filter(paper -> !paper.large());
    }

    /** One for a wall; empty for any other word. */
    public static Optional<Paper> onWall(String code) {
        return Coded.parse(Paper.class, code).filter(Paper::large);
    }

    float width() {
        return width;
    }

    float height() {
        return height;
    }
}
