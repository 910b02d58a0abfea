package drylap.papers;

import drylap.papers.WeekPlan.Band.Kind;
import java.awt.Color;

/** A day as a strip of time; its marks are told apart without colour. */
record DayStrip(Pen pen, float x, float y, float width, int from, int until) {
    static final float HEIGHT = 15;

    private static final Color RAIN = new Color(0x0b5cc4);
    private static final Color DARK = new Color(0xa9b1bd);
    private static final Color FAINT = new Color(0x8a94a3);
    private static final float WORK = 6;

    void frame() {
        pen.box(x, y, width, HEIGHT, 0.5f, FAINT);
    }

    /** Minutes; what lies outside the strip is cut off. */
    void band(Kind kind, int begin, int end) {
        float left = at(Math.max(begin, from));
        float wide = at(Math.min(end, until)) - left;
        if (wide <= 0) return;
        switch (kind) {
            case SHIFT -> pen.box(left, y, wide, HEIGHT, 1.1f, Style.INK);
            case WORK -> pen.fill(left, y + HEIGHT - WORK, wide, WORK, Style.INK);
            case RAIN -> pen.hatch(left, y, wide, HEIGHT, 4, true, 1, RAIN);
            case DARK -> pen.fill(left, y, wide, HEIGHT, DARK);
            case NOT_FORECAST -> pen.dashedLine(1, 3, 1.4f, FAINT, left, y + 4, left + wide, y + 4);
        }
    }

    private float at(int minute) {
        return x + width * (minute - from) / (until - from);
    }
}
