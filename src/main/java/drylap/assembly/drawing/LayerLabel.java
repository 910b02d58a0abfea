package drylap.assembly.drawing;

import drylap.assembly.Apron;
import drylap.assembly.AsBuilt;
import drylap.assembly.Layer;
import drylap.assembly.Step;

/** The name of a layer within its cut, with what a crew must know of it. */
record LayerLabel(Layer layer, Point at, String words, boolean present, boolean fault) {

    static LayerLabel of(Layer layer, Point at, Cut cut, AsBuilt built, boolean fault) {
        boolean present = built.has(layer);
        String words = name(layer) + (present ? state(layer, cut, built) : " – to come");
        return new LayerLabel(layer, at, words, present, fault);
    }

    private static String name(Layer layer) {
        return switch (layer) {
            case W1S, W1J, W1H -> "first barrier";
            case W2S, W2J, W2H -> "second barrier";
            default -> layer.words();
        };
    }

    private static String state(Layer layer, Cut cut, AsBuilt built) {
        return switch (layer) {
            case W1H -> flap(built);
            case W1S, W1J -> built.barrierUncut() ? ", not cut" : "";
            case APR -> built.apron() instanceof Apron.LowerEdgeFree ? ", lower edge FREE" : ", edge held";
            case HF -> !built.has(Layer.W1H) && built.conditions().headEdgeBonded() ? ", bond only" : "";
            case JF -> jamb(cut, built);
            default -> "";
        };
    }

    private static String flap(AsBuilt built) {
        if (built.barrierUncut()) return ", not cut";
        if (built.flapUp()) return ", flap UP";
        return built.done().contains(Step.CLOSE_FLAP) ? ", flap down" : "";
    }

    private static String jamb(Cut cut, AsBuilt built) {
        return switch (cut) {
            case HEAD -> ", top end";
            case JAMB -> "";
            case SILL -> built.edgeFree(Layer.JF) ? ", tail FREE" : ", tail";
        };
    }
}
