package drylap.assembly.drawing;

import drylap.assembly.AsBuilt;
import drylap.assembly.Layer;
import java.util.ArrayList;
import java.util.List;

/** The line of a layer, with what its span alone does not show: the raised flap, the pan's turn over the sill. */
final class LayerShape {
    private LayerShape() {}

    static List<Point> of(Layer layer, Cut cut, AsBuilt built, Stack stack) {
        var line = new ArrayList<>(stack.line(layer));
        if (layer == Layer.W1H && built.flapUp()) foldUp(line);
        if (layer == Layer.PAN) turnOverSill(line, cut.edge());
        return line;
    }

    private static void foldUp(List<Point> line) {
        var fold = line.getLast();
        line.add(fold.plus(5, 5));
        line.add(fold.plus(12, 4));
        line.add(fold.plus(18, -4));
        line.add(fold.plus(22, -38));
    }

    private static void turnOverSill(List<Point> line, double sill) {
        line.addFirst(new Point(12, sill - 3));
        line.addFirst(new Point(12, sill - 19));
    }
}
