package drylap.papers;

import drylap.papers.DaySheet.Kind;
import drylap.speech.Speech;
import java.util.List;

/** A crew's day on paper: where to, what to load, each opening with what is to be ticked, and how the laps go. */
public final class CrewDayPaper {
    private static final float GAP = 14;
    private static final float LEAST_SECTION = 560;

    private final DaySheet day;
    private final Speech say;
    private final Sheet sheet;

    private CrewDayPaper(DaySheet day, Sheet sheet) {
        this.day = day;
        this.say = day.say();
        this.sheet = sheet;
    }

    /**
     * Prints a day.
     *
     * @throws IllegalArgumentException where a link is too long for a code
     */
    public static byte[] pdf(DaySheet day, Paper paper) {
        return Sheet.pdf(paper, day.say(), day.title(), day.origin(), sheet -> new CrewDayPaper(day, sheet).lay());
    }

    private void lay() {
        day.places().forEach(this::place);
        if (!day.load().isEmpty()) {
            sheet.heading(say.it("Load for this day"));
            day.load().forEach(words -> {
                sheet.paragraph(Style.TEXT, words);
                sheet.down(3);
            });
        }
        sheet.heading(say.it(day.stops().isEmpty() ? "No visits" : "In this order"));
        for (int i = 0; i < day.stops().size(); i++)
            new StopBlock(i + 1, day.stops().get(i), sheet).lay();
        if (!day.kinds().isEmpty()) sections();
    }

    private void place(DaySheet.Place place) {
        sheet.need(Style.HEAD.leading() * 2);
        sheet.paragraph(Style.HEAD, place.name());
        sheet.paragraph(Style.TEXT, place.where());
        if (!place.holds().isEmpty())
            sheet.paragraph(
                    Style.STRONG,
                    say.it("Hold points, go on only when someone has looked: {0}", String.join("; ", place.holds())));
        sheet.down(6);
    }

    /** Two beside one another, as large as can be: they are read at arm's length. */
    private void sections() {
        float width = (sheet.width() - GAP) / 2;
        List<Kind> kinds = day.kinds();
        sheet.need(LEAST_SECTION);
        sheet.heading(say.it("How the laps go"));
        for (int i = 0; i < kinds.size(); i += 2) {
            sheet.need(LEAST_SECTION);
            pair(kinds.subList(i, Math.min(i + 2, kinds.size())), width);
        }
    }

    private void pair(List<Kind> pair, float width) {
        float words = pair.stream().map(kind -> said(kind, width)).reduce(0f, Math::max);
        float room = sheet.room() - words;
        float tallest = 0;
        for (int side = 0; side < pair.size(); side++) {
            var drawing = new SvgDrawing(pair.get(side).svg());
            float wide = Math.min(width, width * room / drawing.height(width));
            float x = sheet.x() + side * (width + GAP);
            section(pair.get(side), x, width);
            drawing.draw(sheet.pen(), x, sheet.y() + words, wide);
            tallest = Math.max(tallest, drawing.height(wide));
        }
        sheet.down(words + tallest);
    }

    private static float said(Kind kind, float width) {
        return Style.STRONG.height(kind.words(), width) + Style.TEXT.height(kind.openings(), width) + 4;
    }

    private void section(Kind kind, float x, float width) {
        float y = lines(Style.STRONG, kind.words(), x, sheet.y(), width);
        lines(Style.TEXT, kind.openings(), x, y, width);
    }

    private float lines(Style style, String words, float x, float from, float width) {
        float y = from;
        for (String line : style.wrap(words, width)) {
            sheet.pen().text(x, y + style.size(), style, line);
            y += style.leading();
        }
        return y;
    }
}
