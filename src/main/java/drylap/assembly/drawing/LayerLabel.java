package drylap.assembly.drawing;

import drylap.assembly.Apron;
import drylap.assembly.AsBuilt;
import drylap.assembly.Layer;
import drylap.assembly.Step;
import drylap.speech.Saying;
import drylap.speech.Speech;

/** The name of a layer within its cut, with what a crew must know of it. */
record LayerLabel(Layer layer, Point at, String words, boolean present, boolean fault) {

    static LayerLabel of(Layer layer, Point at, Cut cut, AsBuilt built, boolean fault, Speech say) {
        boolean present = built.has(layer);
        String name = say.it(name(layer));
        String state = present ? say.it(state(layer, cut, built)) : "";
        String words = present ? name : say.it("{0} – to come", name);
        return new LayerLabel(layer, at, state.isEmpty() ? words : name + ", " + state, present, fault);
    }

    private static Saying name(Layer layer) {
        return switch (layer) {
            case W1S, W1J, W1H -> Saying.of("first barrier");
            case W2S, W2J, W2H -> Saying.of("second barrier");
            default -> layer.saying();
        };
    }

    private static Saying state(Layer layer, Cut cut, AsBuilt built) {
        return switch (layer) {
            case W1H -> flap(built);
            case W1S, W1J -> Saying.of(built.barrierUncut() ? "not cut" : "");
            case APR -> Saying.of(built.apron() instanceof Apron.LowerEdgeFree ? "lower edge FREE" : "edge held");
            case HF -> Saying.of(!built.has(Layer.W1H) && built.conditions().headEdgeBonded() ? "bond only" : "");
            case JF -> jamb(cut, built);
            default -> Saying.of("");
        };
    }

    private static Saying flap(AsBuilt built) {
        if (built.barrierUncut()) return Saying.of("not cut");
        if (built.flapUp()) return Saying.of("flap UP");
        return Saying.of(built.done().contains(Step.CLOSE_FLAP) ? "flap down" : "");
    }

    private static Saying jamb(Cut cut, AsBuilt built) {
        return switch (cut) {
            case HEAD -> Saying.of("top end");
            case JAMB -> Saying.of("");
            case SILL -> Saying.of(built.edgeFree(Layer.JF) ? "tail FREE" : "tail");
        };
    }
}
