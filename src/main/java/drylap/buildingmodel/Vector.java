package drylap.buildingmodel;

/** Three coordinates, in the model's units. */
record Vector(double x, double y, double z) {
    static final Vector ZERO = new Vector(0, 0, 0);
    static final Vector UP = new Vector(0, 0, 1);

    Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    Vector minus(Vector other) {
        return plus(other.times(-1));
    }

    Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    /** Of length one; not a number where it has none. */
    Vector unit() {
        return times(1 / length());
    }

    boolean finite() {
        return Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z);
    }
}
