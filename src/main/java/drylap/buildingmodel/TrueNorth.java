package drylap.buildingmodel;

import drylap.buildingmodel.step.StepEntity;
import drylap.buildingmodel.step.StepFault;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Where true north lies in the model's plan.
 *
 * @param said whether the model says it; where it does not, IfcGeometricRepresentationContext has it along +Y
 */
record TrueNorth(double x, double y, boolean said) {
    private static final int DIRECTION = 5;
    private static final double FULL_TURN = 360;

    /** @throws StepFault where the model has several, or one that is no direction */
    static TrueNorth of(ModelFile file) throws StepFault {
        List<StepEntity> contexts = file.all("IFCGEOMETRICREPRESENTATIONCONTEXT").stream()
                .filter(context -> context.reference(DIRECTION).isPresent())
                .toList();
        Set<TrueNorth> norths = contexts.stream()
                .flatMap(context -> file.entity(context, DIRECTION).stream())
                .map(direction -> of(direction.numbers(0)))
                .collect(Collectors.toSet());
        if (contexts.isEmpty()) return new TrueNorth(0, 1, false);
        TrueNorth north = norths.size() == 1 ? norths.iterator().next() : new TrueNorth(0, 0, true);
        if (Math.hypot(north.x, north.y) > 0) return north;
        throw new StepFault(
                0,
                contexts.getFirst().id(),
                (norths.size() > 1 ? ModelSaid.OTHER_NORTH : ModelSaid.NO_NORTH).with(),
                ModelSaid.ONE_NORTH.with());
    }

    private static TrueNorth of(List<Double> ratios) {
        double length = ratios.size() < 2 ? 0 : Math.hypot(ratios.get(0), ratios.get(1));
        return length > 0 && Double.isFinite(length)
                ? new TrueNorth(ratios.get(0) / length, ratios.get(1) / length, true)
                : new TrueNorth(0, 0, true);
    }

    /** Degrees clockwise from true north to a direction of the plan, to a tenth, from 0 to below 360. */
    double azimuth(Vector direction) {
        double clockwise = Math.toDegrees(
                Math.atan2(direction.x() * y - direction.y() * x, direction.x() * x + direction.y() * y));
        double tenths = Math.round((clockwise + FULL_TURN) % FULL_TURN * 10) / 10.0;
        return tenths >= FULL_TURN ? 0 : tenths;
    }

    /** In degrees counter-clockwise from the model's +Y axis. */
    String words() {
        double turned = Math.round(Math.toDegrees(Math.atan2(-x, y)) * 10) / 10.0;
        return said ? ModelSaid.NORTH.with(turned == 0 ? 0.0 : turned) : ModelSaid.NORTH_NOT_SAID.with();
    }
}
