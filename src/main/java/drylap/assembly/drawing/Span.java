package drylap.assembly.drawing;

/** From where to where a layer runs down a cut. */
record Span(double top, double bottom) {
    boolean covers(double y) {
        return y >= top && y <= bottom;
    }

    double middle() {
        return (top + bottom) / 2;
    }
}
