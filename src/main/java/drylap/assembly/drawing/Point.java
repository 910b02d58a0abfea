package drylap.assembly.drawing;

record Point(double x, double y) {
    Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
