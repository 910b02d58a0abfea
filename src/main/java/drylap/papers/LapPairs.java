package drylap.papers;

import drylap.papers.DaySheet.Kind;
import drylap.speech.Speech;
import java.util.List;

/** Lap sections, two beside one another, as large as can be: they are read at arm's length. */
final class LapPairs {
    private static final float GAP = 14;
    private static final float LEAST = 560;

    private final Speech say;
    private final Sheet sheet;
    private final float width;

    LapPairs(Speech say, Sheet sheet) {
        this.say = say;
        this.sheet = sheet;
        width = (sheet.width() - GAP) / 2;
    }

    void lay(List<Kind> kinds) {
        if (kinds.isEmpty()) return;
        sheet.need(LEAST);
        sheet.heading(say.it("How the laps go"));
        for (int i = 0; i < kinds.size(); i += 2) {
            sheet.need(LEAST);
            pair(kinds.subList(i, Math.min(i + 2, kinds.size())));
        }
    }

    private void pair(List<Kind> pair) {
        float words = pair.stream().map(this::said).reduce(0f, Math::max);
        float room = sheet.room() - words;
        float tallest = 0;
        for (int side = 0; side < pair.size(); side++) {
            var drawing = new SvgDrawing(pair.get(side).svg());
            float wide = Math.min(width, width * room / drawing.height(width));
            float x = sheet.x() + side * (width + GAP);
            float y = sheet.lines(Style.STRONG, pair.get(side).words(), x, sheet.y(), width);
            sheet.lines(Style.TEXT, pair.get(side).openings(), x, y, width);
            drawing.draw(sheet.pen(), x, sheet.y() + words, wide);
            tallest = Math.max(tallest, drawing.height(wide));
        }
        sheet.down(words + tallest);
    }

    private float said(Kind kind) {
        return Style.STRONG.height(kind.words(), width) + Style.TEXT.height(kind.openings(), width) + 4;
    }
}
