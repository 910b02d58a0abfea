package drylap.assembly;

import java.util.Arrays;
import java.util.List;

/** What decides the laps of an opening: how the window is set, how the sill deals with water, what follows below it. */
public record Variant(Method method, Approach approach, SecondLayer secondLayer) {
    /** All 24. */
    public static List<Variant> all() {
        return Arrays.stream(Method.values())
                .flatMap(method -> Arrays.stream(Approach.values())
                        .flatMap(approach -> Arrays.stream(SecondLayer.values())
                                .map(second -> new Variant(method, approach, second))))
                .toList();
    }

    /** The step that ends the block that is never interrupted: the last lap of the window crew. */
    public Step lastLapOfInstall() {
        return method.barrierFirst() ? Step.CLOSE_FLAP : Step.HEAD_FLASHING;
    }

    /** The first layers that hide the window crew's laps. */
    List<Step> firstCover() {
        if (!method.barrierFirst()) return List.of(Step.BARRIER_SILL);
        return secondLayer == SecondLayer.NONE
                ? List.of(Step.CLADDING)
                : List.of(Step.SECOND_SILL, Step.SECOND_JAMB, Step.SECOND_HEAD);
    }

    @Override
    public String toString() {
        return "%s %s %s".formatted(method, approach.code(), secondLayer.code());
    }
}
