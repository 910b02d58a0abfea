package drylap.papers;

import drylap.papers.ReleaseSheet.Row;
import drylap.speech.Speech;
import java.awt.Color;

/** A course that goes from one trade to the next: what is ready at each opening, boxes to tick, and lines to sign. */
public final class ReleasePaper {
    private static final float GLYPH = 54;
    private static final float PAD = 6;
    private static final float TICKS = 92;
    private static final float TICK = 12;
    private static final float SIGNATURES = 118;
    private static final Color LINE = new Color(0x8a94a3);

    private final Speech say;
    private final Sheet sheet;
    private final Pen pen;
    private final float words;

    private ReleasePaper(Speech say, Sheet sheet) {
        this.say = say;
        this.sheet = sheet;
        pen = sheet.pen();
        words = sheet.width() - GLYPH - TICKS - 4 * PAD;
    }

    public static byte[] pdf(ReleaseSheet release, Paper paper) {
        return Sheet.pdf(
                paper,
                release.say(),
                release.title(),
                release.origin(),
                sheet -> new ReleasePaper(release.say(), sheet).lay(release));
    }

    private void lay(ReleaseSheet release) {
        release.facts().forEach(fact -> sheet.paragraph(Style.TEXT, fact));
        sheet.down(8);
        release.rows().forEach(this::row);
        sheet.need(SIGNATURES);
        sheet.paragraph(
                Style.STRONG,
                say.it(
                        "A tick here counts once it is entered in Drylap; what is returned stays with who released it."));
        signature(say.it("Released by (window crew): name, signature"));
        signature(say.it("Accepted by (trade that follows): name, signature"));
    }

    private void row(Row row) {
        float height = height(row);
        sheet.need(height + PAD);
        float x = sheet.x();
        float y = sheet.y();
        pen.box(x, y, sheet.width(), height, 0.8f, LINE);
        new FrontDrawing(row.front(), pen, x + PAD, y + PAD, GLYPH).draw();
        float at = sheet.lines(Style.HEAD, head(row), x + GLYPH + 2 * PAD, y + PAD, words);
        for (String fact : row.words()) at = sheet.lines(Style.TEXT, fact, x + GLYPH + 2 * PAD, at, words);
        tick(say.it("accepted"), x + sheet.width() - TICKS, y + PAD);
        tick(say.it("returned"), x + sheet.width() - TICKS, y + PAD + 2 * TICK);
        sheet.down(height + PAD);
    }

    private String head(Row row) {
        return "%s: %s".formatted(row.opening(), say.it(row.ready() ? "apron ready" : "NOT ready"));
    }

    private float height(Row row) {
        float said = Style.HEAD.height(head(row), words);
        for (String fact : row.words()) said += Style.TEXT.height(fact, words);
        return Math.max(said, GLYPH) + 2 * PAD;
    }

    private void tick(String words, float x, float y) {
        pen.box(x, y, TICK, TICK, 1, Style.INK);
        pen.text(x + TICK + 6, y + TICK - 2, Style.TEXT, words);
    }

    private void signature(String who) {
        float y = sheet.y() + 34;
        pen.line(0.8f, Style.INK, sheet.x(), y, sheet.x() + sheet.width(), y);
        pen.text(sheet.x(), y + 10, Style.SMALL, who);
        pen.text(sheet.x() + sheet.width() - 130, y + 10, Style.SMALL, say.it("date and time"));
        sheet.down(48);
    }
}
