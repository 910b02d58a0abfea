package drylap.papers;

import drylap.papers.DaySheet.Step;
import drylap.papers.DaySheet.Stop;
import java.awt.Color;
import java.util.List;

/** One visit of the day, never torn by the end of a page: glyph, what and where, code, and the boxes to tick in two columns. */
final class StopBlock {
    private static final float PAD = 6;
    private static final float GLYPH = 62;
    private static final float CODE = 84;
    private static final float GAP = 10;
    private static final float TICK = 11;
    private static final Color LINE = new Color(0x8a94a3);

    private final int number;
    private final Stop stop;
    private final Sheet sheet;
    private final Pen pen;
    private final float words;
    private final float column;

    StopBlock(int number, Stop stop, Sheet sheet) {
        this.number = number;
        this.stop = stop;
        this.sheet = sheet;
        pen = sheet.pen();
        words = sheet.width() - 2 * PAD - GLYPH - CODE - 2 * GAP;
        column = (sheet.width() - 2 * PAD - GAP) / 2;
    }

    void lay() {
        float height = height();
        sheet.need(height + PAD);
        float x = sheet.x();
        float y = sheet.y();
        pen.box(x, y, sheet.width(), height, 0.8f, LINE);
        new FrontDrawing(stop.front(), pen, x + PAD, y + PAD, GLYPH).draw();
        QrCode.of(stop.link()).draw(pen, x + sheet.width() - CODE, y, CODE);
        said(x + PAD + GLYPH + GAP, y + PAD);
        ticks(x + PAD, y + PAD + top());
        sheet.down(height + PAD);
    }

    private float height() {
        return top() + half(true) + 2 * PAD;
    }

    private float top() {
        float said = Style.HEAD.height(head(), words);
        for (String fact : stop.facts()) said += Style.TEXT.height(fact, words);
        for (String warning : stop.warnings()) said += Style.WARNING.height("! " + warning, words);
        return Math.max(Math.max(said, GLYPH), CODE - PAD) + PAD;
    }

    private String head() {
        return "%d.  %s  %s".formatted(number, stop.time(), stop.opening());
    }

    private void said(float x, float from) {
        float y = sheet.lines(Style.HEAD, head(), x, from, words);
        for (String fact : stop.facts()) y = sheet.lines(Style.TEXT, fact, x, y, words);
        for (String warning : stop.warnings()) y = sheet.lines(Style.WARNING, "! " + warning, x, y, words);
    }

    private List<Step> side(boolean left) {
        int half = (stop.steps().size() + 1) / 2;
        return left
                ? stop.steps().subList(0, half)
                : stop.steps().subList(half, stop.steps().size());
    }

    private float half(boolean left) {
        float height = 0;
        for (Step step : side(left)) height += tickHeight(step);
        return left ? Math.max(height, half(false)) : height;
    }

    private float tickHeight(Step step) {
        return Math.max(TICK + 4, Style.TEXT.height(step.words(), column - TICK - 6) + 3);
    }

    private void ticks(float x, float from) {
        for (boolean left : new boolean[] {true, false}) {
            float y = from;
            float at = left ? x : x + column + GAP;
            for (Step step : side(left)) {
                pen.box(at, y + 1, TICK, TICK, 1, Style.INK);
                if (step.done()) pen.line(1.6f, Style.INK, at + 2, y + 7, at + 5, y + 10, at + 10, y + 3);
                sheet.lines(Style.TEXT, step.words(), at + TICK + 6, y, column - TICK - 6);
                y += tickHeight(step);
            }
        }
    }
}
