package drylap.bench;

import drylap.planning.PlanProgress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How the cost of plans comes down over time, as a picture: each line is one run, in percent above where it ended. */
final class CostCurve {
    /** One run. */
    record Line(String name, List<PlanProgress> seen) {
        Line {
            seen = List.copyOf(seen);
        }
    }

    private static final int WIDTH = 780;
    private static final int HEIGHT = 400;
    private static final int LEFT = 70;
    private static final int RIGHT = 600;
    private static final int TOP = 20;
    private static final int BOTTOM = 340;
    private static final double LEAST_S = 0.001;
    private static final int DECADES = 5;
    private static final int MOST_PERCENT = 150;
    private static final List<String> DASHES = List.of("none", "8 3", "2 3", "10 3 2 3", "5 5");

    private final StringBuilder svg = new StringBuilder();

    private CostCurve() {}

    static void write(Path file, List<Line> lines) {
        try {
            Files.writeString(file, svg(lines));
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    static String svg(List<Line> lines) {
        CostCurve curve = new CostCurve();
        curve.frame();
        for (int i = 0; i < lines.size(); i++) curve.line(lines.get(i), i);
        return curve.svg.append("</svg>\n").toString();
    }

    private void add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private void frame() {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\" font-family=\"sans-serif\" font-size=\"13\">",
                WIDTH, HEIGHT);
        add("<title>Cost of the best plan so far over time, by openings of the job</title>");
        add("<style>:root{--ink:#1d2733;--paper:#fff;--rule:#c4ccd4}"
                + "@media(prefers-color-scheme:dark){:root{--ink:#e8edf2;--paper:#141a21;--rule:#46515c}}"
                + "rect{fill:var(--paper)}text{fill:var(--ink)}polyline{fill:none;stroke:var(--ink);stroke-width:2}"
                + "line{stroke:var(--rule)}</style>");
        add("<rect width=\"%d\" height=\"%d\"/>", WIDTH, HEIGHT);
        for (int decade = 0; decade <= DECADES; decade++) {
            double seconds = LEAST_S * Math.pow(10, decade);
            double x = x(seconds);
            add("<line x1=\"%.1f\" y1=\"%d\" x2=\"%.1f\" y2=\"%d\"/>", x, TOP, x, BOTTOM);
            add("<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%s</text>", x, BOTTOM + 18, label(seconds));
        }
        for (int percent = 0; percent <= MOST_PERCENT; percent += 50) {
            add("<line x1=\"%d\" y1=\"%.1f\" x2=\"%d\" y2=\"%.1f\"/>", LEFT, y(percent), RIGHT, y(percent));
            add("<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">+%d %%</text>", LEFT - 8, y(percent) + 4, percent);
        }
        add(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">time (logarithmic)</text>",
                (LEFT + RIGHT) / 2, HEIGHT - 15);
        add(
                "<text transform=\"translate(16 %d) rotate(-90)\" text-anchor=\"middle\">cost above the last</text>",
                HEIGHT / 2);
    }

    private static String label(double seconds) {
        return seconds < 0.5 ? "%.0f ms".formatted(seconds * 1000) : "%.0f s".formatted(seconds);
    }

    private void line(Line line, int number) {
        double last = cost(line.seen().getLast());
        List<String> points = new ArrayList<>();
        for (PlanProgress one : line.seen()) {
            double percent = 100 * (cost(one) - last) / Math.max(1, last);
            points.add(String.format(Locale.ROOT, "%.1f,%.1f", x(one.elapsed().toNanos() / 1e9), y(percent)));
        }
        add(
                "<polyline stroke-dasharray=\"%s\" points=\"%s\"/>",
                DASHES.get(number % DASHES.size()), points.stream().distinct().collect(Collectors.joining(" ")));
        int y = TOP + 20 + 24 * number;
        add(
                "<polyline stroke-dasharray=\"%s\" points=\"%d,%d %d,%d\"/>",
                DASHES.get(number % DASHES.size()), RIGHT + 12, y - 4, RIGHT + 46, y - 4);
        add("<text x=\"%d\" y=\"%d\">%s</text>", RIGHT + 52, y, line.name());
    }

    private static double cost(PlanProgress progress) {
        return progress.medium() + (double) progress.soft();
    }

    private static double x(double seconds) {
        double decades = Math.log10(Math.max(LEAST_S, seconds) / LEAST_S);
        return LEFT + (RIGHT - LEFT) * Math.min(DECADES, decades) / DECADES;
    }

    private static double y(double percent) {
        return BOTTOM - (BOTTOM - TOP) * Math.clamp(percent, 0, MOST_PERCENT) / MOST_PERCENT;
    }
}
