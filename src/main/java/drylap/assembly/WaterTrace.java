package drylap.assembly;

import static drylap.assembly.Layer.FLH;
import static drylap.assembly.Layer.FLJ;
import static drylap.assembly.Layer.FLS;
import static drylap.assembly.Layer.HF;
import static drylap.assembly.Layer.JF;
import static drylap.assembly.Layer.RO;
import static drylap.assembly.Layer.TRM;
import static drylap.assembly.Layer.W1H;
import static drylap.assembly.Layer.W1J;
import static drylap.assembly.Layer.W1S;
import static drylap.assembly.Layer.W2H;
import static drylap.assembly.Layer.W2J;
import static drylap.assembly.Layer.W2S;
import static drylap.assembly.WaterPath.Side.BEHIND;
import static drylap.assembly.WaterPath.Side.HELD_BY_BOND;
import static drylap.assembly.WaterPath.Side.OUTER_FACE;

import drylap.assembly.WaterPath.End;
import drylap.assembly.WaterPath.Leg;
import drylap.assembly.WaterPath.Side;
import drylap.assembly.WaterPath.Start;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Follows water down an opening. Where a lap is wrong or missing the water takes that way, else it falls on the layer
 * directly below. It is put on every layer of a plane that rain or a leak of the cladding can wet, so that no lap goes untried.
 */
public final class WaterTrace {
    private final AsBuilt built;
    private final List<WaterPath> paths = new ArrayList<>();

    private WaterTrace(AsBuilt built) {
        this.built = built;
    }

    public static List<WaterPath> of(AsBuilt built) {
        var trace = new WaterTrace(built);
        if (built.hole()) trace.enterOpening();
        else trace.wetTheWall();
        return List.copyOf(trace.paths);
    }

    private void enterOpening() {
        for (var start : Start.values()) end(start, List.of(new Leg(RO, OUTER_FACE)), End.ENTERS_OPENING);
    }

    private void wetTheWall() {
        present(W2H, W1H).forEach(layer -> follow(Start.HEAD, List.of(), layer));
        if (!built.has(W1H)) overHeadEdge(Start.HEAD, List.of(new Leg(RO, OUTER_FACE)));
        present(W2J, W1J, JF).forEach(layer -> follow(Start.JAMB, List.of(), layer));
        if (built.windowSet()) {
            if (built.has(JF)) follow(Start.JAMB, List.of(), FLJ);
            else end(Start.JAMB, legs(List.of(), FLJ, BEHIND), End.ENTERS_WALL);
            follow(Start.SILL, List.of(), FLS);
        } else {
            present(W1S).forEach(layer -> follow(Start.SILL, List.of(), layer));
        }
    }

    private void follow(Start start, List<Leg> before, Layer layer) {
        var faults = built.laps()
                .filter(lap -> lap.over() == layer)
                .filter(lap -> built.isReversed(lap) || lap.vertical() && built.isMissing(lap))
                .toList();
        boolean raised = layer == W1H && built.flapUp();
        var legs = legs(before, layer, raised ? BEHIND : OUTER_FACE);
        if (raised) overHeadEdge(start, legs);
        faults.forEach(lap -> behind(start, legs, lap.under()));
        if (layer == FLS && built.has(W2S) && Weakness.secondEdgeOpen(built)) behind(start, legs, W2S);
        if (faults.isEmpty()) fall(start, legs, layer);
    }

    private void fall(Start start, List<Leg> legs, Layer layer) {
        var below = directlyBelow(layer);
        below.forEach(next -> follow(start, legs, next));
        if (below.isEmpty()) end(start, legs, endOf(layer));
    }

    private End endOf(Layer layer) {
        return switch (layer) {
            case W1S -> built.has(W2S) ? End.DRAINS_BETWEEN_BARRIERS : End.DRAINS_OUTSIDE;
            case W2S -> End.DRAINS_OUTSIDE;
            default -> End.DRIPS_ON_BARE_WALL;
        };
    }

    /** The window is one object, so water on its head or jambs runs down it to the sill. */
    private List<Layer> directlyBelow(Layer layer) {
        if (layer == FLH || layer == FLJ) return List.of(FLS);
        var candidates = built.laps()
                .filter(lap -> lap.over() == layer && lap.vertical() && !built.isReversed(lap))
                .map(Lap::under)
                .filter(built::has)
                .toList();
        return outermost(candidates);
    }

    /** Without those that another of them covers. */
    private List<Layer> outermost(List<Layer> layers) {
        var graph = LapGraph.of(built.variant());
        return layers.stream()
                .filter(layer -> layers.stream().noneMatch(other -> graph.outboard(other, layer)))
                .toList();
    }

    private void behind(Start start, List<Leg> before, Layer layer) {
        if (!built.has(layer)) {
            end(start, legs(before, layer, BEHIND), End.ENTERS_WALL);
            return;
        }
        var legs = legs(before, layer, BEHIND);
        var caught = outermost(backing(layer));
        caught.forEach(next -> follow(start, legs, next));
        if (caught.isEmpty()) end(start, legs, End.ENTERS_WALL);
    }

    /** What still catches water behind a layer: a sheet that runs on behind it, not one that it merely laps at its foot. */
    private List<Layer> backing(Layer layer) {
        if (layer == TRM) return built.has(W2S) ? backing(W2S) : List.of();
        return built.laps()
                .filter(lap -> lap.over() == layer && !built.isReversed(lap) && built.has(lap.under()))
                .filter(lap -> lap.kind() == Lap.Kind.FACE || runsOnBehind(lap))
                .map(Lap::under)
                .toList();
    }

    private static boolean runsOnBehind(Lap lap) {
        return lap.over().kind() == Layer.Kind.FLASHING
                && lap.under().kind() == Layer.Kind.BARRIER
                && lap.order() == Lap.Order.NORMAL;
    }

    /** Water that runs down a bare wall, or is funnelled by a raised flap, on to whatever is at the head. */
    private void overHeadEdge(Start start, List<Leg> before) {
        if (!built.has(HF)) end(start, legs(before, FLH, BEHIND), End.ENTERS_WALL);
        else if (built.conditions().headEdgeHolds()) fall(start, legs(before, HF, HELD_BY_BOND), HF);
        else end(start, legs(before, HF, BEHIND), End.ENTERS_WALL);
    }

    private Stream<Layer> present(Layer... layers) {
        return Stream.of(layers).filter(built::has);
    }

    private static List<Leg> legs(List<Leg> before, Layer layer, Side side) {
        var legs = new ArrayList<>(before);
        legs.add(new Leg(layer, side));
        return List.copyOf(legs);
    }

    private void end(Start start, List<Leg> legs, End end) {
        paths.add(new WaterPath(start, legs, end));
    }
}
