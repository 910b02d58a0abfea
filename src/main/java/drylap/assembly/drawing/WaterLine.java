package drylap.assembly.drawing;

import drylap.assembly.AsBuilt;
import drylap.assembly.Layer;
import drylap.assembly.WaterPath;
import drylap.assembly.WaterPath.End;
import drylap.assembly.WaterPath.Leg;
import drylap.assembly.WaterPath.Side;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The line that water draws through one cut, down the outer faces and behind what lets it past. */
final class WaterLine {
    private static final double OFF_FACE = 6.5;
    private static final double FALLS_FROM = 14;
    private static final double IN_WALL = Stack.WALL_FACE - 18;

    private final Cut cut;
    private final AsBuilt built;
    private final Stack stack;
    private final WaterPath path;
    private final boolean fails;
    private final boolean inside;
    private final double rainFrom;
    private final List<Leg> legs;
    private final List<Point> points = new ArrayList<>();
    private double y = Cut.TOP;

    WaterLine(Cut cut, AsBuilt built, Stack stack, WaterChoice choice, double rainFrom) {
        this.cut = cut;
        this.built = built;
        this.stack = stack;
        this.path = choice.path();
        this.fails = choice.fails();
        this.inside = choice.endsInside();
        this.rainFrom = rainFrom;
        this.legs = choice.legsIn(cut);
        if (path.end() == End.ENTERS_OPENING) intoOpening();
        else if (cut == Cut.JAMB) fromTheSide();
        else fromAbove();
    }

    List<Point> points() {
        return points;
    }

    private void intoOpening() {
        double at = cut.openingBelow() ? cut.edge() + 66 : cut.edge() - 22;
        add(rainFrom, at - 8);
        add(IN_WALL, at);
    }

    private void fromTheSide() {
        if (fails) sidewaysBehind(legs.getLast().layer());
        else {
            var layer = legs.getFirst().layer();
            double at = stack.visibleAt(layer);
            add(rainFrom, at - 10);
            add(stack.x(layer, at) + OFF_FACE, at);
            add(stack.x(layer, at + 12) + OFF_FACE, at + 12);
        }
    }

    /** In at the edge away from the opening; a sheet that comes from further away lets it in at the opening. */
    private void sidewaysBehind(Layer layer) {
        var span = cut.span(layer, built);
        boolean fromAbove = legs.size() < 2 && !path.legs().getFirst().layer().equals(layer);
        if (fromAbove && span.top() <= Cut.TOP) {
            y = Cut.TOP;
            behind(layer, true);
            return;
        }
        boolean outerEdge = span.top() > Cut.TOP;
        double edge = outerEdge ? span.top() : span.bottom();
        int inward = outerEdge ? 1 : -1;
        add(rainFrom, edge - inward * 16);
        add(stack.x(layer, edge) + 3, edge - inward * 7);
        add(stack.x(layer, edge) - OFF_FACE, edge + inward * 4);
        add(stack.x(layer, edge + inward * 22) - OFF_FACE, edge + inward * 22);
        add(IN_WALL, edge + inward * 34);
    }

    private void fromAbove() {
        for (int i = 0; i < legs.size(); i++) {
            var leg = legs.get(i);
            boolean last = i == legs.size() - 1;
            switch (leg.side()) {
                case OUTER_FACE -> face(leg.layer(), last ? null : legs.get(i + 1));
                case BEHIND -> {
                    if (leg.layer() == Layer.W1H && built.flapUp()) offTheFlap();
                    else behind(leg.layer(), last);
                }
                case HELD_BY_BOND -> face(leg.layer(), last ? null : legs.get(i + 1));
            }
        }
        if (!inside) runOut();
    }

    private void face(Layer layer, @Nullable Leg next) {
        if (layer == Layer.RO) {
            add(Stack.WALL_FACE + 5, y);
            return;
        }
        var span = cut.span(layer, built);
        if (points.isEmpty() && span.top() > y) add(stack.x(layer, span.top()) + 14, y);
        double from = Math.max(y, span.top());
        double until = span.bottom() + 2;
        if (next != null && next.side() == Side.BEHIND && next.layer() != Layer.RO)
            until = Math.max(from, Math.min(until, cut.span(next.layer(), built).top() - 4));
        along(layer, from, until, OFF_FACE);
    }

    private void behind(Layer layer, boolean last) {
        var span = cut.span(layer, built);
        double from = Math.max(y, span.top() + 2);
        double until = Math.max(from, Math.min(span.bottom() - 6, last ? from + 44 : Cut.BOTTOM));
        along(layer, from, until, -OFF_FACE);
        if (last && inside) add(IN_WALL, until + 10);
    }

    private void offTheFlap() {
        double fold = cut.span(Layer.W1H, built).bottom();
        add(stack.x(Layer.W1H, fold) + 36, Cut.TOP);
        add(stack.x(Layer.W1H, fold) + 34, fold - 14);
        add(stack.x(Layer.W1H, fold) + 10, fold + 5);
        y = fold + 6;
        if (!built.has(Layer.HF)) add(Stack.WALL_FACE + 5, fold + 18);
    }

    private void along(Layer layer, double from, double until, double off) {
        double landing = lands(stack.x(layer, from) + off, from, until);
        for (double at = landing; at < until; at += 5) add(stack.x(layer, at) + off, at);
        add(stack.x(layer, until) + off, until);
        y = until;
    }

    /** From an edge that stands off, water falls a little before it meets the next face. */
    private double lands(double x, double from, double until) {
        double gap = points.isEmpty() ? 0 : points.getLast().x() - x;
        return gap > FALLS_FROM ? Math.min(until, from + gap) : from;
    }

    private void runOut() {
        if (!points.isEmpty() && y < Cut.BOTTOM - 8) add(points.getLast().x() + 3, Cut.BOTTOM - 6);
    }

    private void add(double x, double at) {
        points.add(new Point(x, at));
    }
}
