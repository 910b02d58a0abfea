package drylap.buildingmodel;

import java.util.Optional;

/** Where something lies and how it is turned, in the coordinates of the whole model; the axes are of length one and upright on each other. */
record Placed(Vector origin, Vector x, Vector y, Vector z) {
    static final Placed WORLD = new Placed(Vector.ZERO, new Vector(1, 0, 0), new Vector(0, 1, 0), Vector.UP);
    private static final double PARALLEL = 1e-9;

    /** As IfcAxis2Placement3D has it: the reference is brought upright on the axis; none where it lies along it. */
    static Optional<Placed> of(Vector origin, Vector axis, Vector reference) {
        Vector z = axis.unit();
        Vector across = reference.minus(z.times(reference.dot(z)));
        if (!z.finite() || !(across.length() > PARALLEL) || !origin.finite()) return Optional.empty();
        Vector x = across.unit();
        return Optional.of(new Placed(origin, x, z.cross(x), z));
    }

    /** Of something placed within this, where it lies in the model. */
    Placed holding(Placed within) {
        return new Placed(origin.plus(turned(within.origin)), turned(within.x), turned(within.y), turned(within.z));
    }

    private Vector turned(Vector local) {
        return x.times(local.x()).plus(y.times(local.y())).plus(z.times(local.z()));
    }
}
