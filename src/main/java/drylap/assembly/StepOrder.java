package drylap.assembly;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which steps an assembly has and which must come before which, derived from its laps. */
public final class StepOrder {
    private final Map<Step, Set<Step>> before = new EnumMap<>(Step.class);

    private StepOrder(Collection<Precedence> precedences) {
        for (var precedence : precedences) {
            before.computeIfAbsent(precedence.first(), step -> EnumSet.noneOf(Step.class));
            before.computeIfAbsent(precedence.then(), step -> EnumSet.noneOf(Step.class))
                    .add(precedence.first());
        }
    }

    /** What the laps alone demand. */
    public static StepOrder ofLaps(Variant variant) {
        return new StepOrder(Precedence.ofLaps(LapGraph.of(variant)));
    }

    /** What crews follow: the laps, access to the work, and the release between the trades. */
    public static StepOrder of(Variant variant) {
        return new StepOrder(Precedence.ofWork(variant));
    }

    /** As {@link #of}, with a water test before anything covers the laps. */
    public static StepOrder withWaterTest(Variant variant) {
        var precedences = new ArrayList<>(Precedence.ofWork(variant));
        precedences.addAll(Precedence.ofWaterTest(variant));
        return new StepOrder(precedences);
    }

    public Set<Step> steps() {
        return before.keySet();
    }

    /** The steps that must be done before this one, those named directly only. */
    public Set<Step> before(Step step) {
        return before.getOrDefault(step, Set.of());
    }

    /** What still has to be done before this step may be. */
    public Set<Step> missing(Step step, Collection<Step> done) {
        var missing = EnumSet.noneOf(Step.class);
        missing.addAll(before(step));
        missing.removeAll(done);
        return missing;
    }

    /** The steps that may be done now, the customary one first. */
    public List<Step> next(Collection<Step> done) {
        return steps().stream()
                .filter(step -> !done.contains(step))
                .filter(step -> missing(step, done).isEmpty())
                .toList();
    }

    /** The customary order: always the first of the steps that may be done. */
    public List<Step> sequence() {
        var sequence = new ArrayList<Step>();
        for (var next = next(sequence); !next.isEmpty(); next = next(sequence)) sequence.add(next.getFirst());
        if (sequence.size() < before.size())
            throw new IllegalStateException("steps wait for one another: " + remaining(sequence));
        return List.copyOf(sequence);
    }

    /** The steps by rounds: those of a round wait for the round before it and not for one another. */
    public List<Set<Step>> rounds() {
        var rounds = new ArrayList<Set<Step>>();
        var done = EnumSet.noneOf(Step.class);
        for (var next = next(done); !next.isEmpty(); next = next(done)) {
            rounds.add(EnumSet.copyOf(next));
            done.addAll(next);
        }
        return rounds;
    }

    /** Whether every step of the order finds in place what it needs, and none comes twice. */
    public boolean allows(List<Step> order) {
        var done = EnumSet.noneOf(Step.class);
        for (var step : order)
            if (!before.containsKey(step) || !missing(step, done).isEmpty() || !done.add(step)) return false;
        return true;
    }

    private Set<Step> remaining(List<Step> sequence) {
        var remaining = EnumSet.copyOf(before.keySet());
        sequence.forEach(remaining::remove);
        return remaining;
    }
}
