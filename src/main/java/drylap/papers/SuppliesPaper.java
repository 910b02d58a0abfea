package drylap.papers;

import drylap.papers.SuppliesSheet.Line;
import drylap.papers.SuppliesSheet.Stock;
import java.awt.Color;
import java.util.List;

/** What installs take, and how their strips are cut, with a box to tick at each cut and each roll. */
public final class SuppliesPaper {
    private static final float NAMES = 118;
    private static final float TICK = 10;
    private static final float PAD = 4;
    private static final Color LINE = new Color(0x8a94a3);

    private final Sheet sheet;

    private SuppliesPaper(Sheet sheet) {
        this.sheet = sheet;
    }

    public static byte[] pdf(SuppliesSheet supplies, Paper paper) {
        return Sheet.pdf(
                paper,
                supplies.say(),
                supplies.title(),
                supplies.origin(),
                sheet -> new SuppliesPaper(sheet).lay(supplies));
    }

    private void lay(SuppliesSheet supplies) {
        supplies.facts().forEach(fact -> sheet.paragraph(Style.TEXT, fact));
        sheet.down(6);
        supplies.shares().forEach(share -> line(share, false));
        supplies.notes().forEach(note -> {
            sheet.paragraph(Style.SMALL, note);
            sheet.down(2);
        });
        supplies.stocks().forEach(this::stock);
    }

    private void stock(Stock stock) {
        sheet.heading(stock.head());
        cuts(stock.cuts());
        sheet.down(4);
        stock.rolls().forEach(roll -> line(roll, true));
    }

    /** Two beside one another. */
    private void cuts(List<String> cuts) {
        float half = sheet.width() / 2;
        for (int i = 0; i < cuts.size(); i += 2) {
            List<String> row = cuts.subList(i, Math.min(i + 2, cuts.size()));
            float height = row.stream()
                    .map(cut -> Style.STRONG.height(cut, half - TICK - 2 * PAD))
                    .reduce(0f, Math::max);
            sheet.need(height + PAD);
            for (int column = 0; column < row.size(); column++)
                ticked(sheet.x() + column * half, Style.STRONG, row.get(column), half);
            sheet.down(height + PAD);
        }
    }

    private void ticked(float x, Style style, String words, float width) {
        sheet.pen().box(x, sheet.y() + 1, TICK, TICK, 1, Style.INK);
        sheet.lines(style, words, x + TICK + PAD, sheet.y(), width - TICK - 2 * PAD);
    }

    /** Beside the name; what is longer than a page goes on on the next. Answers how high it is. */
    private float words(String words, float width) {
        List<String> lines = Style.TEXT.wrap(words, width);
        for (String line : lines) {
            sheet.need(Style.TEXT.leading());
            sheet.pen().text(sheet.x() + NAMES, sheet.y() + Style.TEXT.size(), Style.TEXT, line);
            sheet.down(Style.TEXT.leading());
        }
        return lines.size() * Style.TEXT.leading();
    }

    private void line(Line line, boolean tick) {
        float words = sheet.width() - NAMES;
        float height = Math.max(
                Style.STRONG.height(line.name(), NAMES - TICK - 2 * PAD), Style.TEXT.height(line.words(), words));
        sheet.need(Math.min(height + 2 * PAD, sheet.emptyRoom()));
        if (tick) ticked(sheet.x(), Style.STRONG, line.name(), NAMES);
        else sheet.lines(Style.STRONG, line.name(), sheet.x(), sheet.y(), NAMES - PAD);
        float said = words(line.words(), words);
        sheet.down(Math.max(0, height - said) + PAD);
        sheet.pen().line(0.5f, LINE, sheet.x(), sheet.y(), sheet.x() + sheet.width(), sheet.y());
        sheet.down(PAD);
    }
}
