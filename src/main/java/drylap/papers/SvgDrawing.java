package drylap.papers;

import java.awt.Color;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Draws what lap sections are made of: rectangles, circles, straight paths, discs, words, moved groups and the two ends of a water path,
 * each in a plain colour. Words stay words, so that they can be selected.
 */
final class SvgDrawing {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final Pattern SUBPATH = Pattern.compile("M([^Mz]*)(z?)");
    private static final Pattern ROUND = Pattern.compile("M[^A]*A\\S+ \\S+ 0 1 1 ");
    private static final Color FAULT = new Color(0xb3201a);

    private final Element svg;
    private final float[] box;

    SvgDrawing(String text) {
        svg = parse(text);
        box = numbers(svg.getAttribute("viewBox"));
    }

    /** How high it is when drawn so wide. */
    float height(float width) {
        return box[3] * width / box[2];
    }

    void draw(Pen pen, float x, float y, float width) {
        new Drawing(pen, x, y, width / box[2]).children(svg);
    }

    private record Drawing(Pen pen, float left, float top, float scale) {
        void children(Element parent) {
            for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling())
                if (node instanceof Element element) element(element);
        }

        private void element(Element element) {
            switch (element.getTagName()) {
                case "g" -> moved(element).children(element);
                case "rect" -> rect(element);
                case "circle" ->
                    paint(element, "fill")
                            .ifPresent(colour -> pen.circle(
                                    x(element, "cx"), y(element, "cy"), number(element, "r") * scale, colour));
                case "path" -> path(element);
                case "text" -> words(element);
                default -> {}
            }
        }

        private Drawing moved(Element group) {
            float[] by = numbers(group.getAttribute("transform"));
            return by.length < 2 ? this : new Drawing(pen, left + by[0] * scale, top + by[1] * scale, scale);
        }

        private void rect(Element rect) {
            paint(rect, "fill")
                    .ifPresent(colour -> pen.fill(
                            x(rect, "x"),
                            y(rect, "y"),
                            number(rect, "width") * scale,
                            number(rect, "height") * scale,
                            colour));
        }

        private void path(Element path) {
            Matcher round = ROUND.matcher(path.getAttribute("d"));
            if (round.find()) {
                disc(path, round);
                return;
            }
            var style = style(path);
            for (MatchResult part :
                    SUBPATH.matcher(path.getAttribute("d")).results().toList()) {
                float[] points = points(part.group(1));
                paint(path, "fill").ifPresent(colour -> pen.polygon(colour, points));
                paint(path, "stroke").ifPresent(colour -> stroke(style, colour, points));
            }
            ends(path.getAttribute("marker-end"), points(path.getAttribute("d")));
        }

        /** An arc that goes all the way round from its uppermost point. */
        private void disc(Element path, Matcher round) {
            float[] numbers = numbers(round.group());
            float radius = numbers[2];
            paint(path, "fill")
                    .ifPresent(colour -> pen.circle(
                            left + numbers[0] * scale, top + (numbers[1] + radius) * scale, radius * scale, colour));
        }

        private void stroke(Map<String, String> style, Color colour, float[] points) {
            float width = numbers(style.getOrDefault("stroke-width", "1"))[0] * scale;
            float[] dashes = numbers(style.getOrDefault("stroke-dasharray", ""));
            if (style.getOrDefault("stroke", "").startsWith("url")) pen.dashedLine(1.4f, 1.4f, width, colour, points);
            else if (dashes.length > 0)
                pen.dashedLine(dashes[0] * scale, dashes[dashes.length - 1] * scale, width, colour, points);
            else pen.line(width, colour, points);
        }

        /** An arrow where water flows on, a cross where it enters. */
        private void ends(String marker, float[] points) {
            if (marker.isEmpty() || points.length < 4) return;
            float x = points[points.length - 2];
            float y = points[points.length - 1];
            double angle = Math.atan2(y - points[points.length - 3], x - points[points.length - 4]);
            float size = 6 * scale;
            if (marker.contains("-enter")) {
                pen.line(1.2f, FAULT, x - size, y - size, x + size, y + size);
                pen.line(1.2f, FAULT, x - size, y + size, x + size, y - size);
            } else arrow(x, y, angle, size * 1.3f);
        }

        private void arrow(float x, float y, double angle, float size) {
            float forthX = (float) Math.cos(angle) * size;
            float forthY = (float) Math.sin(angle) * size;
            pen.polygon(
                    new Color(0x0b5cc4),
                    x + forthX / 2,
                    y + forthY / 2,
                    x - forthX / 2 - forthY / 2,
                    y - forthY / 2 + forthX / 2,
                    x - forthX / 2 + forthY / 2,
                    y - forthY / 2 - forthX / 2);
        }

        private void words(Element text) {
            var style = style(text);
            var font = style.getOrDefault("font-style", "").equals("italic")
                    ? Fonts.ITALIC
                    : style.getOrDefault("font-weight", "").isEmpty() ? Fonts.REGULAR : Fonts.BOLD;
            float size = numbers(style.getOrDefault("font-size", "12"))[0] * scale;
            String words = font.printable(text.getTextContent());
            float back = style.getOrDefault("text-anchor", "").equals("middle") ? font.width(words, size) / 2 : 0;
            var colour = paint(text, "fill").orElse(Style.INK);
            pen.text(x(text, "x") - back, y(text, "y"), new Style(font, size, colour), words);
        }

        private float[] points(String path) {
            float[] points = numbers(path);
            for (int i = 0; i + 1 < points.length; i += 2) {
                points[i] = left + points[i] * scale;
                points[i + 1] = top + points[i + 1] * scale;
            }
            return points;
        }

        private float x(Element element, String name) {
            return left + number(element, name) * scale;
        }

        private float y(Element element, String name) {
            return top + number(element, name) * scale;
        }
    }

    private static float number(Element element, String name) {
        return Float.parseFloat(element.getAttribute(name));
    }

    private static Optional<Color> paint(Element element, String name) {
        String value = style(element).getOrDefault(name, "none");
        if (value.startsWith("#")) return Optional.of(Color.decode(value));
        return value.startsWith("url") ? Optional.of(FAULT) : Optional.empty();
    }

    private static Map<String, String> style(Element element) {
        return Arrays.stream(element.getAttribute("style").split(";"))
                .map(pair -> pair.split(":", 2))
                .filter(pair -> pair.length == 2)
                .collect(Collectors.toMap(pair -> pair[0].strip(), pair -> pair[1].strip(), (_, last) -> last));
    }

    private static float[] numbers(String text) {
        List<Float> found = new ArrayList<>();
        NUMBER.matcher(text).results().forEach(number -> found.add(Float.parseFloat(number.group())));
        float[] numbers = new float[found.size()];
        for (int i = 0; i < numbers.length; i++) numbers[i] = found.get(i);
        return numbers;
    }

    private static Element parse(String text) {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(text)))
                    .getDocumentElement();
        } catch (ParserConfigurationException | SAXException | IOException trouble) {
            throw new IllegalArgumentException("this is no drawing: " + trouble.getMessage(), trouble);
        }
    }
}
