package drylap.assembly.drawing;

import drylap.assembly.RainCheck;
import drylap.assembly.RainRating;
import drylap.speech.Speech;
import java.util.ArrayList;
import java.util.List;

/** The rating as a shape with its code, its words, and what speaks against a better one. */
final class Banner {
    private static final double TEXT_X = 64;
    private static final double CHARACTER = 6.7;
    private static final double BOLD_CHARACTER = 9;
    private static final int MOST_REASONS = 3;

    private final RainCheck check;
    private final List<String> words;
    private final List<String> reasons = new ArrayList<>();

    Banner(RainCheck check, double width, Speech say) {
        this.check = check;
        int room = (int) ((width - TEXT_X - 8) / CHARACTER);
        words = wrapped(say.it(check.rating().words()), (int) ((width - TEXT_X - 8) / BOLD_CHARACTER));
        check.weaknesses().stream()
                .limit(MOST_REASONS)
                .forEach(weakness -> reasons.addAll(wrapped(say.it(weakness.saying()), room)));
        int more = check.weaknesses().size() - MOST_REASONS;
        if (more > 0) reasons.add(say.it("and {0} more", more));
    }

    double height() {
        return Math.max(62, 26 + 18 * words.size() + 16 * reasons.size());
    }

    void paint(Canvas canvas) {
        shape(canvas);
        double y = reasons.isEmpty() && words.size() == 1 ? 38 : 26;
        for (var line : words) {
            canvas.text(new Point(TEXT_X, y), Ink.TEXT, 15, "font-weight:700", line);
            y += 18;
        }
        for (var reason : reasons) {
            canvas.text(new Point(TEXT_X, y), Ink.TEXT, 12.5, "", reason);
            y += 16;
        }
    }

    /** Each rating has its own outline, so that it reads without colour. */
    private void shape(Canvas canvas) {
        String outline = switch (check.rating()) {
            case OPEN -> "M25 12L43 12L55 24L55 40L43 52L25 52L13 40L13 24z";
            case COVER_ONLY -> "M34 8L58 52L10 52z";
            case LIGHT_RAIN -> "M12 12L56 12L56 52L12 52z";
            case RAIN_SAFE -> "M34 9A23 23 0 1 1 33.9 9z";
        };
        Ink ink = check.rating() == RainRating.RAIN_SAFE
                ? Ink.SAFE
                : check.rating() == RainRating.OPEN ? Ink.FAULT : Ink.TEXT;
        canvas.raw("<path d='%s' style='fill:%s'/>".formatted(outline, canvas.paint(ink)));
        double y = check.rating() == RainRating.COVER_ONLY ? 46 : 38;
        canvas.text(
                new Point(34, y),
                Ink.PAPER,
                16,
                "font-weight:700;text-anchor:middle",
                check.rating().code());
    }

    private static List<String> wrapped(String words, int room) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (var word : words.split(" ")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
