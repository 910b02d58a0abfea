package drylap.assembly.drawing;

import drylap.assembly.Approach;
import drylap.assembly.AsBuilt;

/** The frame, the glass and the sealant bed, once the window is set. */
final class WindowDrawing {
    private static final double FRAME = 24;

    private final Cut cut;
    private final AsBuilt built;
    private final Canvas canvas;
    private final Stack stack;

    WindowDrawing(Cut cut, AsBuilt built, Canvas canvas, Stack stack) {
        this.cut = cut;
        this.built = built;
        this.canvas = canvas;
        this.stack = stack;
    }

    void paint(String frame) {
        if (!built.windowSet()) return;
        boolean below = cut.openingBelow();
        double near = below ? cut.edge() + 8 : cut.edge() - 8 - FRAME;
        double flange = stack.x(cut.flange(), below ? cut.edge() + 6 : cut.edge() - 8);
        double glassTop = below ? near + FRAME : Cut.TOP;
        double glassBottom = below ? Cut.BOTTOM : near;
        canvas.rect(34, glassTop, 9, glassBottom - glassTop, Ink.GLASS);
        canvas.rect(18, near, flange + 2.5 - 18, FRAME, Ink.FRAME);
        canvas.text(new Point(22, near + 16), Ink.PAPER, 11, "font-weight:600", frame);
        if (cut != Cut.SILL || built.variant().approach() == Approach.BARRIER) bed(below);
    }

    private void bed(boolean below) {
        double y = cut.edge() + (below ? -26 : 24);
        canvas.circle(new Point(stack.x(cut.flange(), y) - 6, y), 3.6, Ink.MUTED);
    }
}
