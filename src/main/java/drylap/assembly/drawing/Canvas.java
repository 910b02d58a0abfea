package drylap.assembly.drawing;

import drylap.assembly.LapSection.Colours;
import java.util.List;
import java.util.stream.Collectors;

/** Writes SVG elements in the order in which they are painted. */
final class Canvas {
    private final StringBuilder svg = new StringBuilder();
    private final Colours colours;
    private final String id;

    Canvas(Colours colours, String id) {
        this.colours = colours;
        this.id = id;
    }

    /** An id that no other drawing on the page has. */
    String id(String name) {
        return id + "-" + name;
    }

    String paint(Ink ink) {
        return ink.on(colours);
    }

    Canvas raw(String xml) {
        svg.append(xml).append('\n');
        return this;
    }

    void rect(double x, double y, double width, double height, Ink fill) {
        raw("<rect x='%s' y='%s' width='%s' height='%s' style='fill:%s'/>"
                .formatted(number(x), number(y), number(width), number(height), paint(fill)));
    }

    void circle(Point at, double radius, Ink fill) {
        raw("<circle cx='%s' cy='%s' r='%s' style='fill:%s'/>"
                .formatted(number(at.x()), number(at.y()), number(radius), paint(fill)));
    }

    /** A stroked line; {@code style} adds to it. */
    void line(List<Point> points, Ink ink, double width, String attributes, String style) {
        raw("<path %s d='%s' style='fill:none;stroke:%s;stroke-width:%s;%s'/>"
                .formatted(attributes, path(points), paint(ink), number(width), style));
    }

    void hatch(List<Point> points, double width) {
        raw("<path class='lap-fault' d='%s' style='fill:none;stroke:url(#%s);stroke-width:%s'/>"
                .formatted(path(points), id("hatch"), number(width)));
    }

    void text(Point at, Ink ink, double size, String style, String words) {
        raw("<text x='%s' y='%s' style='fill:%s;font-size:%spx;%s'>%s</text>"
                .formatted(number(at.x()), number(at.y()), paint(ink), number(size), style, escape(words)));
    }

    static String escape(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    static String path(List<Point> points) {
        return "M"
                + points.stream()
                        .map(point -> number(point.x()) + " " + number(point.y()))
                        .collect(Collectors.joining("L"));
    }

    private static String number(double value) {
        double rounded = Math.round(value * 10) / 10.0;
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }

    @Override
    public String toString() {
        return svg.toString();
    }
}
