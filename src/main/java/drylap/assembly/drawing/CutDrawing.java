package drylap.assembly.drawing;

import drylap.assembly.AsBuilt;
import drylap.assembly.Layer;
import drylap.assembly.WaterPath;
import drylap.speech.Speech;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Paints one cut: wall, window, layers from the wall outwards, names, and the water. */
final class CutDrawing {
    private static final double LABEL_X = 188;
    private static final double RAIN_FROM = 172;
    private static final double ROW = 17;
    /** Characters that fit beside a cut. */
    private static final int ROOM = 27;

    private final Cut cut;
    private final AsBuilt built;
    private final Canvas canvas;
    private final Speech say;
    private final Stack stack;
    private final Optional<WaterChoice> water;

    CutDrawing(Cut cut, AsBuilt built, List<WaterPath> paths, Canvas canvas, Speech say) {
        this.say = say;
        this.cut = cut;
        this.built = built;
        this.canvas = canvas;
        this.stack = new Stack(cut, built);
        this.water = WaterChoice.in(cut, paths);
    }

    void paint(double x, double y) {
        canvas.raw("<g transform='translate(%d,%d)'>".formatted((int) x, (int) y));
        canvas.text(new Point(8, 18), Ink.TEXT, 14, "font-weight:700", say.it(cut.caption()));
        wall();
        new WindowDrawing(cut, built, canvas, stack).paint(say.it("frame"));
        stack.layers().stream().filter(stack::drawn).forEach(this::layer);
        water.ifPresent(this::water);
        labels();
        canvas.raw("</g>");
    }

    private void wall() {
        double top = cut.openingBelow() ? Cut.TOP : cut.edge();
        double bottom = cut.openingBelow() ? cut.edge() : Cut.BOTTOM;
        canvas.rect(8, top, Stack.WALL_FACE - 8, bottom - top, Ink.WALL);
        canvas.text(new Point(14, (top + bottom) / 2 + 4), Ink.TEXT, 11, "", say.it("wall"));
    }

    private void layer(Layer layer) {
        if (layer == Layer.CLD) {
            cladding();
            return;
        }
        var line = LayerShape.of(layer, cut, built, stack);
        if (!built.has(layer)) {
            canvas.line(line, Ink.MUTED, 1.3, "class='lap-to-come'", "stroke-dasharray:3 4");
            return;
        }
        canvas.line(
                line, ink(layer), 5, "class='lap-layer' data-layer='" + layer.code() + "'", "stroke-linejoin:round");
        if (layer.kind() == Layer.Kind.SECOND_BARRIER) canvas.line(line, Ink.PAPER, 1.6, "", "");
        if (fault(layer)) canvas.hatch(line, 11);
    }

    private void cladding() {
        var span = cut.span(Layer.CLD, built);
        double x = claddingX();
        if (built.has(Layer.CLD)) canvas.rect(x, span.top(), 11, span.bottom() - span.top(), Ink.CLADDING);
        else
            canvas.line(
                    List.of(new Point(x + 5, span.top()), new Point(x + 5, span.bottom())),
                    Ink.MUTED,
                    1.3,
                    "class='lap-to-come'",
                    "stroke-dasharray:3 4");
    }

    private double claddingX() {
        var span = cut.span(Layer.CLD, built);
        double widest = stack.layers().stream()
                .filter(layer -> layer != Layer.CLD)
                .flatMap(layer -> stack.line(layer).stream())
                .filter(point -> span.covers(point.y()))
                .mapToDouble(Point::x)
                .max()
                .orElse(Stack.WALL_FACE);
        return widest + 13;
    }

    /** Behind the cladding, where it is on: only what passes it matters. */
    private double rainFrom() {
        return built.has(Layer.CLD) ? claddingX() - 1 : RAIN_FROM;
    }

    private static Ink ink(Layer layer) {
        return switch (layer.kind()) {
            case BARRIER -> Ink.BARRIER;
            case SECOND_BARRIER -> Ink.SECOND;
            case WINDOW -> Ink.FRAME;
            default -> layer == Layer.PAN ? Ink.PAN : Ink.FLASHING;
        };
    }

    private boolean fault(Layer layer) {
        return water.filter(WaterChoice::fails)
                .flatMap(choice -> choice.path().failsAt())
                .filter(failing -> failing == layer)
                .isPresent();
    }

    private void water(WaterChoice choice) {
        var points = new WaterLine(cut, built, stack, choice, rainFrom()).points();
        if (points.size() < 2) return;
        canvas.line(points, Ink.PAPER, 6, "", "stroke-linejoin:round;stroke-linecap:round;opacity:.75");
        String attributes = "class='water-path%s' pathLength='100' marker-end='url(#%s)'"
                .formatted(
                        choice.fails() ? " water-path-fails" : "", canvas.id(choice.endsInside() ? "enter" : "flow"));
        canvas.line(points, Ink.WATER, 2.6, attributes, "stroke-linejoin:round;stroke-linecap:round");
        if (choice.path().end() == WaterPath.End.ENTERS_OPENING)
            canvas.text(
                    points.getFirst().plus(-104, -8), Ink.FAULT, 12.5, "font-weight:700", say.it("open: rain gets in"));
    }

    private void labels() {
        var labels = new ArrayList<>(stack.layers().stream()
                .filter(stack::drawn)
                .map(layer -> LayerLabel.of(layer, anchor(layer), cut, built, fault(layer), say))
                .toList());
        labels.sort(Comparator.comparingDouble(label -> label.at().y()));
        double y = Math.min(Cut.TOP + 12, Cut.BOTTOM - ROW * labels.size());
        double left = labels.stream().mapToDouble(CutDrawing::height).sum();
        for (var label : labels) {
            y = Math.max(y, Math.min(label.at().y() + 4, Cut.BOTTOM - left + ROW - 4));
            label(label, y);
            y += height(label);
            left -= height(label);
        }
    }

    private static double height(LayerLabel label) {
        return label.fault() ? 2 * ROW - 2 : ROW;
    }

    private Point anchor(Layer layer) {
        double y = stack.visibleAt(layer);
        double x = layer == Layer.CLD ? claddingX() + 6 : stack.x(layer, y);
        return new Point(x, y);
    }

    private void label(LayerLabel label, double y) {
        var ink = label.fault() ? Ink.FAULT : label.present() ? Ink.TEXT : Ink.MUTED;
        canvas.line(List.of(label.at(), new Point(LABEL_X - 4, y - 4)), ink, 0.8, "", "opacity:.8");
        canvas.circle(label.at(), 2, ink);
        String weight = label.fault() ? "font-weight:700" : label.present() ? "" : "font-style:italic";
        canvas.text(new Point(LABEL_X, y), ink, fitting(label.words()), weight, label.words());
        if (label.fault())
            canvas.text(
                    new Point(LABEL_X, y + 14),
                    Ink.FAULT,
                    12.5,
                    "font-weight:700",
                    "✕ " + say.it("water gets behind it"));
    }

    /** In px: smaller where the words would run out of the drawing. */
    private static double fitting(String words) {
        return words.length() <= ROOM ? 12.5 : Math.max(10, 12.5 * ROOM / words.length());
    }
}
