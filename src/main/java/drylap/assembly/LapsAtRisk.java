package drylap.assembly;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which laps can no longer come out right once a line is done before those that it waits for. */
final class LapsAtRisk {
    record Reversed(Lap lap, AsBuilt asItWouldBe) {}

    private final Variant variant;
    private final Set<Step> steps = EnumSet.noneOf(Step.class);

    private LapsAtRisk(AsBuilt built, WorkLine line) {
        variant = built.variant();
        steps.addAll(built.done());
        steps.addAll(line.steps());
    }

    /** The one whose late layer would be the next to come. */
    static Optional<Reversed> of(AsBuilt built, WorkLine line, List<WorkLine> first) {
        var after = new LapsAtRisk(built, line);
        return first.stream()
                .flatMap(late -> late.steps().stream())
                .flatMap(late -> after.reversedBy(late).stream())
                .findFirst();
    }

    private Optional<Reversed> reversedBy(Step late) {
        return LapGraph.of(variant).laps().stream()
                .filter(lap -> comesWrong(lap, late))
                .findFirst()
                .map(lap -> new Reversed(lap, drawn(lap, late)));
    }

    private boolean comesWrong(Lap lap, Step late) {
        boolean underIsLate = lap.under().placedBy() == late;
        return switch (lap.order()) {
            case NORMAL -> underIsLate && steps.contains(lap.over().placedBy());
            // With its edge still free the over layer waits; and put on after the other, it lies over it just the same.
            case TUCK -> underIsLate && steps.contains(Step.securing(lap.over()));
            case FLAP ->
                underIsLate && steps.contains(Step.CLOSE_FLAP)
                        || late == Step.OPEN_FLAP && steps.contains(lap.under().placedBy());
        };
    }

    private AsBuilt drawn(Lap lap, Step late) {
        var all = EnumSet.copyOf(steps);
        all.add(late);
        return AsBuilt.of(variant, all).withReversed(List.of(lap));
    }
}
