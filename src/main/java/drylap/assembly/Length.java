package drylap.assembly;

/** A length of the trade, which measures in inches; kept in millimetres. */
public record Length(double millimetres) {
    private static final double MM_PER_INCH = 25.4;

    public Length {
        if (!(millimetres >= 0))
            throw new IllegalArgumentException("a length of %s mm; accepted: 0 or more".formatted(millimetres));
    }

    public static Length inches(double inches) {
        return new Length(inches * MM_PER_INCH);
    }

    public double inches() {
        return millimetres / MM_PER_INCH;
    }

    public Length plus(Length other) {
        return new Length(millimetres + other.millimetres);
    }

    public Length minus(Length other) {
        return new Length(millimetres - other.millimetres);
    }

    public boolean meets(Length required) {
        return millimetres >= required.millimetres;
    }
}
