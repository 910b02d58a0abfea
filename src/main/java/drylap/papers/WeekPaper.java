package drylap.papers;

import drylap.papers.WeekPlan.Band.Kind;
import drylap.papers.WeekPlan.Cell;
import drylap.papers.WeekPlan.Crew;
import drylap.papers.WeekPlan.Day;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

/** Crews by days on a large sheet for the wall of the site office: at most seven days beside one another, crews over as many pages as it takes. */
public final class WeekPaper {
    private static final int MOST_DAYS = 7;
    private static final int MOST_LINES_OF_SITES = 5;
    private static final int NOON = 12 * 60;
    private static final float NAMES = 84;
    private static final float CODE = 84;
    private static final float PAD = 5;
    /** The heads of the days take at most this part of a page. */
    private static final float HEADS_OF_PAGE = 4;

    private static final Color LINE = new Color(0x8a94a3);

    private final WeekPlan plan;
    private final Sheet sheet;
    private final Pen pen;

    private WeekPaper(WeekPlan plan, Sheet sheet) {
        this.plan = plan;
        this.sheet = sheet;
        pen = sheet.pen();
    }

    /** @throws IllegalArgumentException where the link is too long for a code */
    public static byte[] pdf(WeekPlan plan, Paper paper) {
        return Sheet.pdf(paper, plan.say(), plan.title(), plan.origin(), sheet -> new WeekPaper(plan, sheet).lay());
    }

    private void lay() {
        above();
        for (int first = 0; first < plan.days().size(); first += MOST_DAYS) {
            if (first > 0) sheet.next();
            new Days(first, Math.min(first + MOST_DAYS, plan.days().size())).lay();
        }
    }

    /** What the marks mean, what is to be heeded, and the code; over as many pages as that takes. */
    private void above() {
        float from = sheet.y();
        float width = sheet.width() - CODE - 12;
        QrCode.of(plan.link()).draw(pen, sheet.x() + sheet.width() - CODE, from - 8, CODE);
        sheet.down(key(from) - from);
        for (String note : plan.notes()) sheet.paragraph(Style.WARNING, "! " + note, width);
        for (String sites : where()) sheet.paragraph(Style.TEXT, sites, width);
        float code = from + CODE - 12;
        if (sheet.page() == 1 && sheet.y() < code) sheet.down(code - sheet.y());
        sheet.down(4);
    }

    /** A line each, as long as they are few. */
    private List<String> where() {
        return plan.where().size() <= MOST_LINES_OF_SITES ? plan.where() : List.of(String.join("; ", plan.where()));
    }

    private float key(float y) {
        float x = sheet.x();
        x = key(x, y, Kind.SHIFT, plan.say().it("shift"));
        x = key(x, y, Kind.WORK, plan.say().it("visits"));
        x = key(x, y, Kind.RAIN, plan.say().it("rain"));
        x = key(x, y, Kind.DARK, plan.say().it("dark"));
        key(x, y, Kind.NOT_FORECAST, plan.say().it("not forecast yet"));
        return y + 22;
    }

    private float key(float x, float y, Kind kind, String words) {
        new DayStrip(pen, x, y + 1, 34, 0, 1).band(kind, 0, 1);
        pen.text(x + 40, y + 12, Style.TEXT, words);
        return x + 40 + Style.TEXT.font().width(words, Style.TEXT.size()) + 22;
    }

    /** Some days of it, beside one another. */
    private final class Days {
        private final int first;
        private final int last;
        private final float column;

        Days(int first, int last) {
            this.first = first;
            this.last = last;
            column = (sheet.width() - NAMES) / (last - first);
        }

        void lay() {
            sheet.need(sheet.emptyRoom() / 2);
            head();
            plan.crews().forEach(this::crew);
        }

        private float x(int day) {
            return sheet.x() + NAMES + (day - first) * column;
        }

        private void head() {
            float deepest = sheet.y();
            for (int i = first; i < last; i++)
                deepest = Math.max(deepest, head(plan.days().get(i), x(i) + PAD));
            sheet.down(deepest - sheet.y());
            for (int i = first; i < last; i++) hours(x(i) + PAD, sheet.y());
            sheet.down(Style.SMALL.leading() + 2);
            pen.line(1.2f, Style.INK, sheet.x(), sheet.y(), sheet.x() + sheet.width(), sheet.y());
        }

        /** Rain at a hundred sites would leave no room for the crews; theirs shows in their own strips, too. Answers where it ends. */
        private float head(Day day, float x) {
            float width = column - 2 * PAD;
            float bottom = sheet.y() + sheet.emptyRoom() / HEADS_OF_PAGE;
            float y = sheet.lines(Style.HEAD, day.name(), x, sheet.y(), width);
            int told = 0;
            for (String rain : day.rain()) {
                if (y + Style.TEXT.height(rain, width) > bottom) break;
                y = sheet.lines(Style.TEXT, rain, x, y, width);
                told++;
            }
            int left = day.rain().size() - told;
            return left == 0 ? y : sheet.lines(Style.TEXT, more(left), x, y, width);
        }

        private String more(int sites) {
            return plan.say()
                    .it(
                            "{0, plural, one {Rain at # more site: see the strips} other {Rain at # more sites: see the strips}}",
                            sites);
        }

        /** Where the strips of the column begin and end, and noon. */
        private void hours(float x, float y) {
            float width = column - 2 * PAD;
            for (int minute : new int[] {plan.from(), NOON, plan.until()}) {
                String words = "%02d:00".formatted(minute / 60);
                float wide = Style.SMALL.font().width(words, Style.SMALL.size());
                float at = (minute - plan.from()) * width / (plan.until() - plan.from()) - wide / 2;
                pen.text(x + Math.clamp(at, 0, width - wide), y + Style.SMALL.size(), Style.SMALL, words);
            }
        }

        private void next() {
            sheet.next();
            head();
        }

        /** A crew whose days do not fit on a page goes on on the next one. */
        private void crew(Crew crew) {
            List<WeekCell> cells = new ArrayList<>();
            for (int i = first; i < last; i++) cells.add(cell(crew.cells().get(i)));
            float whole = height(cells);
            if (whole > sheet.room() && sheet.room() < sheet.emptyRoom() / 2) next();
            boolean goesOn = false;
            while (true) {
                row(crew, cells, goesOn);
                if (cells.stream().allMatch(WeekCell::done)) return;
                goesOn = true;
                next();
            }
        }

        private WeekCell cell(Cell cell) {
            return new WeekCell(cell, sheet, column - 2 * PAD, plan.from(), plan.until());
        }

        private static float height(List<WeekCell> cells) {
            return cells.stream().map(WeekCell::height).reduce(0f, Math::max) + 2 * PAD;
        }

        private void row(Crew crew, List<WeekCell> cells, boolean goesOn) {
            float top = sheet.y();
            float bottom = top + sheet.room();
            float y = sheet.lines(Style.HEAD, crew.name(), sheet.x(), top + PAD, NAMES - PAD);
            y = sheet.lines(Style.TEXT, crew.trade(), sheet.x(), y, NAMES - PAD);
            if (goesOn) y = sheet.lines(Style.TEXT, plan.say().it("goes on"), sheet.x(), y, NAMES - PAD);
            for (int i = 0; i < cells.size(); i++)
                y = Math.max(y, cells.get(i).draw(x(first + i) + PAD, top + PAD, bottom));
            sheet.down(y + PAD - top);
            pen.line(0.8f, LINE, sheet.x(), sheet.y(), sheet.x() + sheet.width(), sheet.y());
            for (int i = first; i < last; i++) pen.line(0.5f, LINE, x(i), top, x(i), sheet.y());
        }
    }
}
