package drylap.papers;

import drylap.papers.Front.Part;
import java.awt.Color;

/** Draws an opening from the front as the page's glyph does: what is in place is solid, what is missing hatched, the rest dashed. */
final class FrontDrawing {
    private static final float SIDE = 13;
    private static final float TOP = 17;
    private static final float FOOT = 14;
    private static final float STRIP = 7;
    private static final float LARGEST = 64;

    private static final Color LAYER = new Color(0xd9b36b);
    private static final Color HEAD = new Color(0xa88a4f);
    private static final Color GLASS = new Color(0xc9dbe8);
    private static final Color ALARM = new Color(0xb3201a);
    private static final Color FAINT = new Color(0x8a94a3);
    private static final Color WRAP = new Color(0xb9a3cf);
    private static final Color BOARD = new Color(0xb5a48f);

    private final Front front;
    private final Pen pen;
    private final float scale;
    private final float left;
    private final float top;
    private final float w;
    private final float h;

    /** @param size of the square that it fits into, margins for laps included */
    FrontDrawing(Front front, Pen pen, float left, float top, float size) {
        this.front = front;
        this.pen = pen;
        this.left = left;
        this.top = top;
        scale = size / (LARGEST + TOP + FOOT);
        float unit = LARGEST / Math.max(front.widthMm(), front.heightMm());
        w = front.widthMm() * unit;
        h = front.heightMm() * unit;
    }

    void draw() {
        wall();
        strip(front.apron(), SIDE - STRIP, TOP + h + 1, w + 2 * STRIP, 8, LAYER);
        if (front.apron() == Part.ON) edge();
        middle();
        pan();
        strip(front.jambs(), SIDE - STRIP, TOP - 5, STRIP, h + 11, LAYER);
        strip(front.jambs(), SIDE + w, TOP - 5, STRIP, h + 11, LAYER);
        strip(front.head(), SIDE - STRIP - 2, TOP - 8, w + 2 * STRIP + 4, 7, HEAD);
        strip(front.flap(), SIDE - 10, TOP - 15, w + 20, 6, WRAP);
        if (front.water()) water();
    }

    private void wall() {
        float width = w + 2 * SIDE;
        float height = h + TOP + FOOT;
        if (front.clad() == Part.ON) for (float at = 5; at < height; at += 6) line(1, BOARD, 0, at, width, at);
        else if (front.wrap() == Part.ON) hatch(0, 0, width, height, 9, false, WRAP);
        if (front.second() == Part.ON && front.clad() != Part.ON) hatch(0, 0, width, height, 9, true, WRAP);
        pen.box(left, top, width * scale, height * scale, 0.4f, FAINT);
    }

    private void edge() {
        float at = TOP + h + 11;
        float[] line = {x(SIDE - STRIP), y(at), x(SIDE + w + STRIP), y(at)};
        if (front.edgeHeld()) pen.line(0.8f, Style.INK, line);
        else pen.dashedLine(1.5f, 2, 0.8f, Style.INK, line);
    }

    /** The window, the hole, or the barrier that nobody has cut yet. */
    private void middle() {
        boolean uncut = front.wrap() == Part.ON && front.flap() == Part.LATER;
        if (front.window() == Part.ON) {
            rect(SIDE, TOP, w, h, Color.WHITE);
            pen.fill(x(SIDE + 3.5f), y(TOP + 3.5f), (w - 7) * scale, (h - 7) * scale, GLASS);
            line(0.7f, Style.INK, SIDE + 3.5f, TOP + h / 2, SIDE + w - 3.5f, TOP + h / 2);
        } else if (uncut) pen.dashedBox(x(SIDE), y(TOP), w * scale, h * scale, 0.6f, FAINT);
        else {
            rect(SIDE, TOP, w, h, Color.WHITE);
            line(0.6f, FAINT, SIDE, TOP, SIDE + w, TOP + h);
            line(0.6f, FAINT, SIDE + w, TOP, SIDE, TOP + h);
        }
    }

    private void pan() {
        if (front.pan() == Part.NONE) return;
        float foot = TOP + h - 0.5f;
        float[] trough = {
            x(SIDE + 1), y(foot - 6.5f), x(SIDE + 1), y(foot), x(SIDE + w - 1), y(foot), x(SIDE + w - 1), y(foot - 6.5f)
        };
        if (front.pan() == Part.ON) pen.line(1.6f, Style.INK, trough);
        else pen.dashedLine(2, 2, 1, front.pan() == Part.MISSING ? ALARM : FAINT, trough);
    }

    private void strip(Part part, float x, float y, float width, float height, Color colour) {
        switch (part) {
            case ON -> rect(x, y, width, height, colour);
            case MISSING -> {
                pen.fill(x(x), y(y), width * scale, height * scale, Color.WHITE);
                hatch(x, y, width, height, 4, true, ALARM);
                pen.box(x(x), y(y), width * scale, height * scale, 0.7f, ALARM);
            }
            case LATER -> pen.dashedBox(x(x), y(y), width * scale, height * scale, 0.6f, FAINT);
            case NONE -> {}
        }
    }

    /** A drop, as large as a letter, with a mark in it. */
    private void water() {
        float x = SIDE + w / 2;
        float y = TOP + h / 2;
        pen.polygon(ALARM, x(x), y(y - 10), x(x + 6), y(y + 2), x(x - 6), y(y + 2));
        pen.circle(x(x), y(y + 3), 6 * scale, ALARM);
        pen.line(1.2f, Color.WHITE, x(x), y(y - 2), x(x), y(y + 3));
        pen.circle(x(x), y(y + 6), 0.8f, Color.WHITE);
    }

    private void rect(float x, float y, float width, float height, Color colour) {
        pen.fill(x(x), y(y), width * scale, height * scale, colour);
        pen.box(x(x), y(y), width * scale, height * scale, 0.7f, Style.INK);
    }

    private void hatch(float x, float y, float width, float height, float step, boolean rising, Color colour) {
        pen.hatch(x(x), y(y), width * scale, height * scale, step * scale, rising, 0.6f, colour);
    }

    private void line(float width, Color colour, float fromX, float fromY, float toX, float toY) {
        pen.line(width, colour, x(fromX), y(fromY), x(toX), y(toY));
    }

    private float x(float inDrawing) {
        return left + inDrawing * scale;
    }

    private float y(float inDrawing) {
        return top + inDrawing * scale;
    }
}
