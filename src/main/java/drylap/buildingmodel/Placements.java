package drylap.buildingmodel;

import drylap.buildingmodel.step.StepEntity;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where products lie in the model, by the chains of their placements. */
final class Placements {
    private static final int LONGEST_CHAIN = 50;
    private static final int OBJECT_PLACEMENT = 5;
    private static final Vector X = new Vector(1, 0, 0);

    private final ModelFile file;
    private final Map<Integer, Optional<Placed>> known = new HashMap<>();

    Placements(ModelFile file) {
        this.file = file;
    }

    /** None where the model does not place it, or by something else than a chain of IfcLocalPlacement. */
    Optional<Placed> of(StepEntity product) {
        return file.entity(product, OBJECT_PLACEMENT).flatMap(placement -> placed(placement, LONGEST_CHAIN));
    }

    private Optional<Placed> placed(StepEntity placement, int chain) {
        if (chain == 0 || !placement.type().equals("IFCLOCALPLACEMENT")) return Optional.empty();
        Optional<Placed> before = known.get(placement.id());
        if (before != null) return before;
        Optional<Placed> placed =
                relative(placement).flatMap(own -> within(placement, chain).map(outer -> outer.holding(own)));
        known.put(placement.id(), placed);
        return placed;
    }

    private Optional<Placed> within(StepEntity placement, int chain) {
        if (placement.reference(0).isEmpty()) return Optional.of(Placed.WORLD);
        return file.entity(placement, 0).flatMap(outer -> placed(outer, chain - 1));
    }

    /** The axis and the direction may be left out: they are then those of the model. */
    private Optional<Placed> relative(StepEntity placement) {
        return file.entity(placement, 1)
                .filter(axes -> axes.type().equals("IFCAXIS2PLACEMENT3D"))
                .flatMap(axes -> vector(axes, 0, Optional.empty())
                        .flatMap(origin -> vector(axes, 1, Optional.of(Vector.UP))
                                .flatMap(axis -> vector(axes, 2, Optional.of(X))
                                        .flatMap(reference -> Placed.of(origin, axis, reference)))));
    }

    private Optional<Vector> vector(StepEntity axes, int place, Optional<Vector> leftOut) {
        return axes.reference(place).isEmpty()
                ? leftOut
                : file.entity(axes, place).flatMap(Placements::vector);
    }

    private static Optional<Vector> vector(StepEntity one) {
        List<Double> numbers = one.numbers(0);
        return numbers.size() == 3
                ? Optional.of(new Vector(numbers.get(0), numbers.get(1), numbers.get(2)))
                : Optional.empty();
    }
}
