package drylap.assembly;

import drylap.speech.Saying;
import java.util.ArrayList;
import java.util.List;

/** One thing that keeps an opening from being rain-safe, and the best rating that it leaves. */
public record Weakness(RainRating atBest, Layer at, Saying saying) {
    Weakness(RainRating atBest, Layer at, String english) {
        this(atBest, at, Saying.of(english));
    }

    public String words() {
        return saying.words();
    }

    static List<Weakness> of(AsBuilt built) {
        if (built.barrierUncut() && built.reversed().stream().noneMatch(built::isReversed)) return List.of();
        var all = new ArrayList<Weakness>();
        addWrongLaps(built, all);
        if (built.hole()) all.add(new Weakness(RainRating.OPEN, Layer.RO, "no window and no uncut barrier"));
        if (built.windowSet()) addBareFlanges(built, all);
        addExposedEdges(built, all);
        if (built.conditions().windy())
            built.freeEdges()
                    .forEach(layer -> all.add(new Weakness(
                            RainRating.LIGHT_RAIN,
                            layer,
                            Saying.of("wind can fold up the free edge: {0}", layer.saying()))));
        return all;
    }

    /** Stricter than gravity asks: wind drives water sideways, so a reversed lateral lap counts like a vertical one. */
    private static void addWrongLaps(AsBuilt built, List<Weakness> all) {
        built.laps()
                .filter(built::isReversed)
                .forEach(lap ->
                        all.add(new Weakness(RainRating.OPEN, lap.under(), new LapVerdict.Reversed(lap).saying())));
        // A bare head is closed by a cover over it, and bare jambs are told apart below.
        built.laps()
                .filter(lap -> lap.vertical() && built.isMissing(lap) && lap.under() != Layer.JF)
                .forEach(lap -> all.add(new Weakness(
                        RainRating.OPEN,
                        lap.under(),
                        Saying.of(
                                "missing under the {0}: {1}",
                                lap.over().saying(), lap.under().saying()))));
    }

    private static void addBareFlanges(AsBuilt built, List<Weakness> all) {
        if (!built.has(Layer.JF))
            all.add(new Weakness(RainRating.OPEN, Layer.FLJ, "the jambs have nothing but the sealant bed"));
        if (!built.has(Layer.HF)) all.add(new Weakness(RainRating.COVER_ONLY, Layer.FLH, "the head flange is bare"));
    }

    private static void addExposedEdges(AsBuilt built, List<Weakness> all) {
        if (built.flapUp())
            all.add(new Weakness(
                    RainRating.COVER_ONLY, Layer.W1H, "the head flap is up and funnels water to the head"));
        else if (built.has(Layer.HF) && !built.has(Layer.W1H)) all.add(headEdge(built.conditions()));
        if (built.has(Layer.W2S) && secondEdgeOpen(built))
            all.add(new Weakness(
                    RainRating.COVER_ONLY,
                    Layer.W2S,
                    "the upper edge of the second barrier is open without its closure"));
    }

    private static Weakness headEdge(Conditions conditions) {
        return conditions.headEdgeHolds()
                ? new Weakness(RainRating.LIGHT_RAIN, Layer.HF, "only the bond holds the top edge of the head flashing")
                : new Weakness(RainRating.COVER_ONLY, Layer.HF, "the top edge of the head flashing is open");
    }

    static boolean secondEdgeOpen(AsBuilt built) {
        return built.variant().secondLayer() == SecondLayer.DRAIN_BETWEEN && !built.has(Layer.TRM);
    }
}
