package drylap.assembly.drawing;

import drylap.assembly.AsBuilt;
import drylap.assembly.Lap;
import drylap.assembly.LapGraph;
import drylap.assembly.Layer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** The layers of a cut from the wall to the outside, and how far out each lies at a height: over all that is beneath it. */
final class Stack {
    static final double WALL_FACE = 54;
    private static final double FIRST = 9;
    private static final double APART = 12.5;
    private static final double EASE = 7;

    private final Cut cut;
    private final AsBuilt built;
    private final List<Layer> outward;
    private final Map<Layer, Span> spans = new EnumMap<>(Layer.class);
    private final List<Layer> drawn;
    private final double flangeX;

    Stack(Cut cut, AsBuilt built) {
        this.cut = cut;
        this.built = built;
        this.outward = outward();
        outward.forEach(layer -> spans.put(layer, cut.span(layer, built)));
        this.drawn = outward.stream().filter(this::drawn).toList();
        this.flangeX = rigid();
    }

    private List<Layer> outward() {
        var graph = LapGraph.of(built.variant());
        var left = new ArrayList<>(
                cut.layers().stream().filter(graph.layers()::contains).toList());
        var sorted = new ArrayList<Layer>();
        while (!left.isEmpty()) {
            var next = left.stream()
                    .filter(layer -> left.stream().noneMatch(inner -> outboard(graph, layer, inner)))
                    .findFirst()
                    .orElseThrow();
            left.remove(next);
            sorted.add(next);
        }
        built.reversed().forEach(lap -> swap(sorted, lap));
        return sorted;
    }

    /** The flange is one object around the window, so what lies over it at the jambs lies over it in each cut. */
    private boolean outboard(LapGraph graph, Layer outer, Layer inner) {
        Layer outerAtJamb = outer == cut.flange() ? Layer.FLJ : outer;
        Layer innerAtJamb = inner == cut.flange() ? Layer.FLJ : inner;
        return outer == Layer.CLD && inner != Layer.CLD
                || over(graph, outer, inner)
                || over(graph, outerAtJamb, innerAtJamb);
    }

    private static boolean over(LapGraph graph, Layer outer, Layer inner) {
        return graph.between(outer, inner).filter(lap -> lap.over() == outer).isPresent();
    }

    private void swap(List<Layer> sorted, Lap lap) {
        int over = sorted.indexOf(lap.over());
        int under = sorted.indexOf(lap.under());
        if (over >= 0 && under >= 0 && built.has(lap.over()) && built.has(lap.under()))
            Collections.swap(sorted, over, under);
    }

    List<Layer> layers() {
        return outward;
    }

    /** The middle of the layer at a height, eased where it climbs over the edge of another. */
    double x(Layer layer, double y) {
        if (layer == cut.flange()) return flangeX;
        double sum = Stream.of(-EASE, -EASE / 2, 0.0, EASE / 2, EASE)
                .mapToDouble(off -> flat(layer, y + off))
                .sum();
        return sum / 5 + flare(layer, y);
    }

    /** The flange does not bend: it stands off as far as the most that lies beneath it. */
    private double rigid() {
        var span = span(cut.flange());
        return Stream.of(span.top() + EASE, span.middle(), span.bottom() - EASE)
                .mapToDouble(y -> flat(cut.flange(), y))
                .max()
                .orElseThrow();
    }

    private double flat(Layer layer, double y) {
        int beneath = 0;
        for (var inner : drawn) {
            if (inner == layer) break;
            if (span(inner).covers(y)) beneath++;
        }
        return WALL_FACE + FIRST + APART * beneath;
    }

    /** A free lower edge stands off the wall, as it will while it waits for the sheet. */
    private double flare(Layer layer, double y) {
        double off = y - (span(layer).bottom() - 34);
        boolean flares =
                off > 0 && cut == Cut.SILL && (layer == Layer.APR || layer == Layer.JF) && built.edgeFree(layer);
        return flares ? off * off / 72 : 0;
    }

    private Span span(Layer layer) {
        return Objects.requireNonNull(spans.get(layer));
    }

    /** Nothing behind an uncut barrier is drawn: the wall shows the barrier only. */
    boolean drawn(Layer layer) {
        return !built.barrierUncut() || layer == cut.barrier();
    }

    List<Point> line(Layer layer) {
        var span = span(layer);
        var points = new ArrayList<Point>();
        for (double y = span.top(); y < span.bottom(); y += 4) points.add(new Point(x(layer, y), y));
        points.add(new Point(x(layer, span.bottom()), span.bottom()));
        return points;
    }

    /** A height at which nothing but the cladding hides the layer, else its middle. */
    double visibleAt(Layer layer) {
        var span = span(layer);
        var outer = outward.subList(outward.indexOf(layer) + 1, outward.size()).stream()
                .filter(other -> other != Layer.CLD && built.has(other))
                .toList();
        var open = new ArrayList<Double>();
        for (double y = span.top() + 5; y <= span.bottom() - 5; y += 3) {
            double at = y;
            if (outer.stream().noneMatch(other -> span(other).covers(at))) open.add(y);
        }
        return open.isEmpty() ? span.middle() : open.get(open.size() / 2);
    }
}
