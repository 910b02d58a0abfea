package drylap.papers;

import drylap.papers.WeekPlan.Band;
import drylap.papers.WeekPlan.Cell;
import drylap.papers.WeekPlan.Stay;
import java.util.Arrays;

/** A crew's day: its strip, then one stay below the other, as far as there is room; the rest goes to the next page. */
final class WeekCell {
    private static final float GAP = 5;

    private final Cell cell;
    private final Sheet sheet;
    private final float width;
    private final int from;
    private final int until;
    private boolean begun;
    private int next;

    WeekCell(Cell cell, Sheet sheet, float width, int from, int until) {
        this.cell = cell;
        this.sheet = sheet;
        this.width = width;
        this.from = from;
        this.until = until;
    }

    boolean done() {
        return begun && next == cell.stays().size();
    }

    float height() {
        float height = DayStrip.HEIGHT + GAP + (cell.said().isEmpty() ? 0 : Style.TEXT.height(cell.said(), width));
        for (Stay stay : cell.stays()) height += height(stay);
        return height;
    }

    private float height(Stay stay) {
        float height = Style.STRONG.height(stay.head(), width)
                + Style.TEXT.height(stay.place(), width)
                + Style.TEXT.height(stay.openings(), width);
        for (String warning : stay.warnings()) height += Style.WARNING.height("! " + warning, width);
        return height + GAP;
    }

    /** Answers where it ends. A stay that would not fit on an empty page is drawn all the same: it is cut off by none but itself. */
    float draw(float x, float top, float bottom) {
        float y = top;
        if (!begun) y = begin(x, y);
        boolean first = true;
        while (next < cell.stays().size()) {
            Stay stay = cell.stays().get(next);
            if (!first && y + height(stay) > bottom) break;
            if (first && y + height(stay) > bottom && height(stay) < sheet.emptyRoom() / 2) break;
            y = draw(stay, x, y);
            first = false;
            next++;
        }
        return y;
    }

    private float begin(float x, float y) {
        begun = true;
        var strip = new DayStrip(sheet.pen(), x, y, width, from, until);
        // what lies below first: dark, rain, then the shift's frame and the work
        for (var kind :
                Arrays.asList(Band.Kind.DARK, Band.Kind.RAIN, Band.Kind.NOT_FORECAST, Band.Kind.SHIFT, Band.Kind.WORK))
            cell.bands().stream()
                    .filter(band -> band.kind() == kind)
                    .forEach(band -> strip.band(kind, band.from(), band.until()));
        strip.frame();
        float below = y + DayStrip.HEIGHT + GAP;
        return cell.said().isEmpty() ? below : sheet.lines(Style.TEXT, cell.said(), x, below, width);
    }

    private float draw(Stay stay, float x, float from) {
        float y = sheet.lines(Style.STRONG, stay.head(), x, from, width);
        y = sheet.lines(Style.TEXT, stay.place(), x, y, width);
        y = sheet.lines(Style.TEXT, stay.openings(), x, y, width);
        for (String warning : stay.warnings()) y = sheet.lines(Style.WARNING, "! " + warning, x, y, width);
        return y + GAP;
    }
}
