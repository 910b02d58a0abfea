package drylap.assembly;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * An opening as it stands: the steps done, and the laps that were built the wrong way round.
 *
 * @param reversed laps of the variant's graph, named by their required direction
 */
public record AsBuilt(Variant variant, Set<Step> done, Set<Lap> reversed, Conditions conditions) {
    public AsBuilt {
        done = Set.copyOf(done);
        reversed = Set.copyOf(reversed);
        if (!LapGraph.of(variant).laps().containsAll(reversed))
            throw new IllegalArgumentException("%s has no such laps: %s".formatted(variant, reversed));
    }

    public static AsBuilt of(Variant variant, Collection<Step> done) {
        return new AsBuilt(variant, Set.copyOf(done), Set.of(), Conditions.USUAL);
    }

    /** Every step done. */
    public static AsBuilt finished(Variant variant) {
        return of(variant, StepOrder.of(variant).steps());
    }

    /** The steps of the customary order up to and including {@code last}. */
    public static AsBuilt after(Variant variant, Step last) {
        var sequence = StepOrder.withWaterTest(variant).sequence();
        int index = sequence.indexOf(last);
        if (index < 0) throw new IllegalArgumentException("%s has no step %s".formatted(variant, last.code()));
        return of(variant, sequence.subList(0, index + 1));
    }

    /** As the numbered list of {@link StepList} stands after line {@code line} (0: the window crew has done nothing). */
    public static AsBuilt afterLine(Variant variant, int line) {
        return of(variant, ListedWork.doneBy(variant, line));
    }

    public AsBuilt withReversed(Collection<Lap> laps) {
        return new AsBuilt(variant, done, Set.copyOf(laps), conditions);
    }

    public AsBuilt under(Conditions other) {
        return new AsBuilt(variant, done, reversed, other);
    }

    /** The laps of the layers that are on, in the direction in which they were built. */
    public List<RecordedLap> recordedLaps() {
        return laps().filter(lap -> has(lap.over()) && has(lap.under()))
                .map(lap -> isReversed(lap)
                        ? new RecordedLap(lap.under(), lap.over())
                        : new RecordedLap(lap.over(), lap.under()))
                .toList();
    }

    public boolean has(Layer layer) {
        if (layer == Layer.RO) return true;
        if (layer == Layer.BS && variant.approach() == Approach.DRAINAGE) return false;
        return done.contains(layer.placedBy());
    }

    public boolean windowSet() {
        return done.contains(Step.SET);
    }

    public boolean flapUp() {
        return done.contains(Step.OPEN_FLAP) && !done.contains(Step.CLOSE_FLAP);
    }

    /** The barrier covers the opening and has not been cut: nothing below it matters yet. */
    public boolean barrierUncut() {
        return variant.method().barrierFirst()
                && has(Layer.W1S)
                && has(Layer.W1J)
                && has(Layer.W1H)
                && !done.contains(Step.OPEN_FLAP);
    }

    /** Neither a window nor an uncut barrier: rain reaches the inside of the wall. */
    public boolean hole() {
        return !windowSet() && !barrierUncut();
    }

    /** The lower edge is free: a layer is still to be tucked under it, or the edge is not secured yet. */
    public boolean edgeFree(Layer layer) {
        return has(layer)
                && laps().anyMatch(lap ->
                        lap.over() == layer && lap.order() == Lap.Order.TUCK && !done.contains(Step.securing(layer)));
    }

    public List<Layer> freeEdges() {
        return EnumSet.allOf(Layer.class).stream().filter(this::edgeFree).toList();
    }

    public Apron apron() {
        if (!has(Layer.APR)) return new Apron.Absent();
        var plane = Apron.Plane.of(variant.secondLayer());
        return edgeFree(Layer.APR) ? new Apron.LowerEdgeFree(plane) : new Apron.Held(plane);
    }

    /** Laps whose under layer is not there although the over layer waits for it. */
    public List<Lap> missing() {
        return laps().filter(this::isMissing).toList();
    }

    Stream<Lap> laps() {
        return LapGraph.of(variant).laps().stream();
    }

    /** Both layers are there, and so is the fault. */
    boolean isReversed(Lap lap) {
        return reversed.contains(lap) && has(lap.over()) && has(lap.under());
    }

    /**
     * The under layer is not there although the over layer waits for it; one that will be tucked in later, or lies behind a
     * barrier that is not cut yet, is not missed.
     */
    boolean isMissing(Lap lap) {
        boolean mayComeLater =
                lap.order() == Lap.Order.TUCK || lap.order() == Lap.Order.FLAP && !done.contains(Step.CLOSE_FLAP);
        return has(lap.over()) && !has(lap.under()) && !mayComeLater;
    }
}
