package drylap.assembly;

import java.util.ArrayList;
import java.util.List;

/** One step before another. */
record Precedence(Step first, Step then) {

    static List<Precedence> ofLaps(LapGraph graph) {
        var all = new ArrayList<Precedence>();
        graph.laps().forEach(lap -> all.addAll(ofLap(lap, graph)));
        return all;
    }

    private static List<Precedence> ofLap(Lap lap, LapGraph graph) {
        Step over = lap.over().placedBy();
        Step under = lap.under().placedBy();
        return switch (lap.order()) {
            case NORMAL -> List.of(new Precedence(under, over));
            case TUCK -> chain(over, under, Step.securing(lap.over()));
            case FLAP -> ofFlap(lap, graph);
        };
    }

    private static List<Precedence> ofFlap(Lap lap, LapGraph graph) {
        var all = new ArrayList<>(
                chain(lap.over().placedBy(), Step.OPEN_FLAP, lap.under().placedBy(), Step.CLOSE_FLAP));
        all.add(new Precedence(Step.OPEN_FLAP, Step.SET));
        graph.over(lap.over())
                .forEach(outer ->
                        all.add(new Precedence(Step.CLOSE_FLAP, outer.over().placedBy())));
        return all;
    }

    /** The laps, what must be reachable, and what one trade owes the next. */
    static List<Precedence> ofWork(Variant variant) {
        var graph = LapGraph.of(variant);
        var all = new ArrayList<>(ofLaps(graph));
        all.addAll(ofAccess(variant, graph));
        all.addAll(chain(variant.lastLapOfInstall(), Step.RELEASE));
        variant.firstCover().forEach(cover -> all.add(new Precedence(Step.RELEASE, cover)));
        all.add(new Precedence(Step.SET, Step.AIR_SEAL));
        return all;
    }

    private static List<Precedence> ofAccess(Variant variant, LapGraph graph) {
        var all = new ArrayList<Precedence>();
        if (variant.method().barrierFirst()) all.addAll(chain(Step.ACCEPT, Step.OPEN_FLAP, Step.APRON));
        else all.add(new Precedence(Step.ACCEPT, Step.APRON));
        boolean covered = variant.secondLayer() == SecondLayer.DRAIN_BETWEEN;
        for (var lap : graph.laps()) {
            if (lap.order() != Lap.Order.TUCK) continue;
            Step securing = Step.securing(lap.over());
            all.add(new Precedence(securing, Step.CLADDING));
            // The second barrier hides the edge, so it must be secured first; the sill joint lies above that barrier.
            if (covered && securing != Step.FINISH_SILL_JOINT) all.add(new Precedence(securing, Step.SECOND_SILL));
        }
        return all;
    }

    static List<Precedence> ofWaterTest(Variant variant) {
        var all = new ArrayList<>(chain(Step.AIR_SEAL, Step.WATER_TEST));
        all.add(new Precedence(variant.lastLapOfInstall(), Step.WATER_TEST));
        variant.firstCover().forEach(cover -> all.add(new Precedence(Step.WATER_TEST, cover)));
        return all;
    }

    private static List<Precedence> chain(Step... steps) {
        var chain = new ArrayList<Precedence>();
        for (int i = 1; i < steps.length; i++) chain.add(new Precedence(steps[i - 1], steps[i]));
        return chain;
    }
}
