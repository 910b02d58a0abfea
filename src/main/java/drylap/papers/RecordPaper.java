package drylap.papers;

import drylap.papers.RecordSheet.Act;
import drylap.papers.RecordSheet.Photo;
import drylap.papers.RecordSheet.Row;
import drylap.speech.Speech;
import java.awt.Color;
import java.util.List;

/** The record of an act of handing over: who, when, in which state, every act before and after, laps, photos. */
public final class RecordPaper {
    private static final float CODE = 84;
    private static final float GLYPH = 60;
    private static final float PAD = 6;
    private static final float GAP = 14;
    private static final float NAMES = 96;
    private static final float[] CHAIN = {0, 0.24f, 0.54f, 0.8f, 1};
    private static final Color LINE = new Color(0x8a94a3);
    private static final String STATE =
            "This says in which state the laps were when they were handed over. It replaces neither "
                    + "local codes, the manufacturer's instructions nor a licensed inspection.";

    private final Speech say;
    private final Sheet sheet;
    private final Pen pen;

    private RecordPaper(Speech say, Sheet sheet) {
        this.say = say;
        this.sheet = sheet;
        pen = sheet.pen();
    }

    /** @throws IllegalArgumentException where the link is too long for a code, or a photo is no JPEG */
    public static byte[] pdf(RecordSheet record, Paper paper) {
        return Sheet.pdf(
                paper,
                record.say(),
                record.title(),
                record.origin(),
                sheet -> new RecordPaper(record.say(), sheet).lay(record));
    }

    private void lay(RecordSheet record) {
        facts(record);
        sheet.heading(say.it("Openings, as they were then"));
        record.rows().forEach(this::row);
        sheet.heading(say.it("From hand to hand"));
        chain(record.chain());
        if (!record.photos().isEmpty() || !record.left().isEmpty()) photos(record);
        new LapPairs(say, sheet).lay(record.laps());
    }

    /** The code stands beside them. */
    private void facts(RecordSheet record) {
        float top = sheet.y();
        float width = sheet.width() - CODE - GAP - NAMES;
        float y = top;
        for (var fact : record.facts()) {
            sheet.lines(Style.STRONG, fact.name(), sheet.x(), y, NAMES - PAD);
            y = sheet.lines(Style.TEXT, fact.value(), sheet.x() + NAMES, y, width) + 2;
        }
        for (String hold : record.holds()) {
            sheet.lines(Style.STRONG, say.it("Hold point"), sheet.x(), y, NAMES - PAD);
            y = sheet.lines(Style.TEXT, hold, sheet.x() + NAMES, y, width) + 2;
        }
        QrCode.of(record.link()).draw(pen, sheet.x() + sheet.width() - CODE, top - 6, CODE);
        sheet.down(Math.max(y - top, CODE - PAD) + PAD);
        sheet.paragraph(Style.TEXT, say.it(STATE));
    }

    private void row(Row row) {
        float width = sheet.width() - GLYPH - 3 * PAD;
        float said = Style.HEAD.height(row.opening(), width);
        for (String words : row.said()) said += Style.TEXT.height(words, width);
        float height = Math.max(said, GLYPH) + 2 * PAD;
        sheet.need(height + PAD);
        pen.box(sheet.x(), sheet.y(), sheet.width(), height, 0.8f, LINE);
        row.front().ifPresent(front -> new FrontDrawing(front, pen, sheet.x() + PAD, sheet.y() + PAD, GLYPH).draw());
        float x = sheet.x() + GLYPH + 2 * PAD;
        float y = sheet.lines(Style.HEAD, row.opening(), x, sheet.y() + PAD, width);
        for (String words : row.said()) y = sheet.lines(Style.TEXT, words, x, y, width);
        sheet.down(height + PAD);
    }

    private void chain(List<Act> chain) {
        act(Style.STRONG, List.of(say.it("When"), say.it("What"), say.it("Who"), say.it("Openings")));
        for (Act act : chain)
            act(
                    act.self() ? Style.STRONG : Style.TEXT,
                    List.of(
                            act.when(),
                            act.self() ? say.it("{0} (this record)", act.what()) : act.what(),
                            act.who(),
                            act.openings()));
    }

    private void act(Style style, List<String> cells) {
        float height = 0;
        for (int i = 0; i < cells.size(); i++) height = Math.max(height, style.height(cells.get(i), wide(i)));
        sheet.need(height + 4);
        for (int i = 0; i < cells.size(); i++) sheet.lines(style, cells.get(i), left(i), sheet.y() + 1, wide(i));
        sheet.down(height + 4);
        pen.line(0.5f, LINE, sheet.x(), sheet.y(), sheet.x() + sheet.width(), sheet.y());
    }

    private float left(int column) {
        return sheet.x() + CHAIN[column] * sheet.width();
    }

    private float wide(int column) {
        return (CHAIN[column + 1] - CHAIN[column]) * sheet.width() - PAD;
    }

    /** Two beside one another: a lap is judged at that size. */
    private void photos(RecordSheet record) {
        float width = (sheet.width() - GAP) / 2;
        sheet.need(width);
        sheet.heading(say.it("Photos"));
        if (!record.left().isEmpty()) sheet.paragraph(Style.TEXT, record.left());
        for (int i = 0; i < record.photos().size(); i += 2)
            pair(record.photos().subList(i, Math.min(i + 2, record.photos().size())), width);
    }

    private void pair(List<Photo> pair, float width) {
        float tallest = 0;
        for (Photo photo : pair)
            tallest = Math.max(tallest, width * tall(photo) + PAD + Style.TEXT.height(photo.words(), width));
        sheet.need(tallest + GAP);
        float x = sheet.x();
        for (Photo photo : pair) {
            float wide = width * Math.min(1, tall(photo) * photo.widthPx() / photo.heightPx());
            pen.jpeg(x, sheet.y(), wide, width * tall(photo), photo.jpeg());
            sheet.lines(Style.TEXT, photo.words(), x, sheet.y() + width * tall(photo) + PAD / 2, width);
            x += width + GAP;
        }
        sheet.down(tallest + GAP);
    }

    /** Height by the width of its place; one that stands is made narrower. */
    private static float tall(Photo photo) {
        return Math.min(1.2f, (float) photo.heightPx() / photo.widthPx());
    }
}
