package drylap.progress;

import drylap.assembly.AsBuilt;
import drylap.assembly.SecondLayer;
import drylap.assembly.Step;
import drylap.kernel.Rules;
import drylap.progress.Exposed.Part;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Which layers lie in the sun, and since when. */
final class Exposures {
    private final AsBuilt built;
    private final List<LineDone> done;

    private Exposures(AsBuilt built, List<LineDone> done) {
        this.built = built;
        this.done = done;
    }

    static List<Exposed> of(AsBuilt built, List<LineDone> done, Rules rules, Instant now) {
        var exposures = new Exposures(built, done);
        return Arrays.stream(Part.values())
                .filter(exposures::bare)
                .map(part -> Exposed.of(part, exposures.since(part), rules.value(part.limit()), now))
                .toList();
    }

    private boolean bare(Part part) {
        return part.placedBy().stream().anyMatch(built.done()::contains) && !covered(part);
    }

    /** An apron under which a layer is tucked still lies outside of it. */
    private boolean covered(Part part) {
        if (built.done().contains(Step.CLADDING)) return true;
        return switch (part) {
            case APRON ->
                built.variant().secondLayer() == SecondLayer.DRAIN_BETWEEN
                        && built.done().contains(Step.SECOND_SILL);
            case FIRST_BARRIER -> built.done().containsAll(Part.SECOND_BARRIER.placedBy());
            case SECOND_BARRIER -> false;
        };
    }

    private @Nullable Instant since(Part part) {
        return done.stream()
                .filter(one -> one.line().steps().stream().anyMatch(part.placedBy()::contains))
                .map(LineDone::at)
                .filter(Objects::nonNull)
                .min(Instant::compareTo)
                .orElse(null);
    }
}
