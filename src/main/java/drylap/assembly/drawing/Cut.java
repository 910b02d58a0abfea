package drylap.assembly.drawing;

import static drylap.assembly.Layer.APR;
import static drylap.assembly.Layer.CLD;
import static drylap.assembly.Layer.FLH;
import static drylap.assembly.Layer.FLJ;
import static drylap.assembly.Layer.FLS;
import static drylap.assembly.Layer.HF;
import static drylap.assembly.Layer.JF;
import static drylap.assembly.Layer.PAN;
import static drylap.assembly.Layer.TRM;
import static drylap.assembly.Layer.W1H;
import static drylap.assembly.Layer.W1J;
import static drylap.assembly.Layer.W1S;
import static drylap.assembly.Layer.W2H;
import static drylap.assembly.Layer.W2J;
import static drylap.assembly.Layer.W2S;

import drylap.assembly.AsBuilt;
import drylap.assembly.Layer;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.assembly.WaterPath.Start;
import java.util.List;

/** One of the three cuts: which layers it shows and where each begins and ends. Not to scale. */
enum Cut {
    HEAD("Head", Start.HEAD, 168, List.of(FLH, JF, HF, W1H, W2H, CLD)),
    JAMB("Jamb, seen from above", Start.JAMB, 168, List.of(FLJ, JF, W1J, W2J, CLD)),
    SILL("Sill", Start.SILL, 72, List.of(W1S, W2S, APR, PAN, TRM, FLS, JF, CLD));

    static final double WIDTH = 352;
    static final double HEIGHT = 262;
    static final double TOP = 30;
    static final double BOTTOM = 254;

    private final String caption;
    private final Start start;
    private final double edge;
    private final List<Layer> layers;

    Cut(String caption, Start start, double edge, List<Layer> layers) {
        this.caption = caption;
        this.start = start;
        this.edge = edge;
        this.layers = layers;
    }

    String caption() {
        return caption;
    }

    Start start() {
        return start;
    }

    /** Where the rough opening begins or ends. */
    double edge() {
        return edge;
    }

    boolean openingBelow() {
        return this != SILL;
    }

    List<Layer> layers() {
        return layers;
    }

    Layer flange() {
        return switch (this) {
            case HEAD -> FLH;
            case JAMB -> FLJ;
            case SILL -> FLS;
        };
    }

    Layer barrier() {
        return switch (this) {
            case HEAD -> W1H;
            case JAMB -> W1J;
            case SILL -> W1S;
        };
    }

    Span span(Layer layer, AsBuilt built) {
        boolean uncut = built.barrierUncut();
        if (layer == barrier() && uncut) return new Span(TOP, BOTTOM);
        return switch (this) {
            case HEAD -> atHead(layer, built);
            case JAMB -> atJamb(layer, built.variant().method());
            case SILL -> atSill(layer, built);
        };
    }

    private Span atHead(Layer layer, AsBuilt built) {
        return switch (layer) {
            case W1H -> new Span(TOP, edge - (built.flapUp() ? 92 : 36));
            case W2H -> new Span(TOP, edge - 52);
            case HF -> new Span(edge - 84, edge - 4);
            case JF -> new Span(edge - 62, edge + 3);
            case CLD -> new Span(TOP, edge - 20);
            default -> new Span(edge - 40, edge + 12);
        };
    }

    private Span atJamb(Layer layer, Method method) {
        return switch (layer) {
            case W1J -> new Span(TOP, edge - (method.barrierFirst() ? 2 : 54));
            case W2J -> new Span(TOP, edge - 66);
            case JF -> new Span(edge - 96, edge - 2);
            case CLD -> new Span(TOP, edge - 28);
            default -> new Span(edge - 40, edge + 12);
        };
    }

    private Span atSill(Layer layer, AsBuilt built) {
        boolean between = built.variant().secondLayer() == SecondLayer.DRAIN_BETWEEN;
        return switch (layer) {
            case W1S -> new Span(edge + (built.variant().method().barrierFirst() ? 2 : 62), BOTTOM);
            case W2S -> new Span(edge + (between ? 62 : 78), BOTTOM);
            case APR -> new Span(edge + 3, edge + 118);
            case PAN -> new Span(edge - 4, edge + 50);
            case TRM -> new Span(edge + 20, edge + 84);
            case JF -> new Span(edge - 7, edge + 108);
            case CLD -> new Span(edge + (between ? 92 : 62), BOTTOM);
            default -> new Span(edge - 12, edge + 40);
        };
    }
}
