package drylap.ui.drawn;

import drylap.season.SiteOutlook;
import drylap.season.SiteOutlook.FacadeOutlook;
import drylap.speech.Speech;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One facade's season as it is drawn, said and listed. The drawing has crew-hours of the window crews that the site has, since it holds
 * them against work; the table has hours of one crew, as the files do.
 */
public record SeasonOfWall(Chart chart, List<String> said, List<Row> rows) {
    /** @param due in months from the first one's start; below 0 where there is none to show */
    public record Chart(String title, List<Month> months, double due, String dueWords) {}

    public record Month(
            String label,
            String year,
            String name,
            double light,
            double usable,
            double low,
            double high,
            double left) {}

    /** What the table says of a month. */
    public record Row(
            String month, String days, String light, String usable, String between, String installLeft, String left) {}

    public static SeasonOfWall of(Speech say, SiteOutlook site, FacadeOutlook facade, String title) {
        double crews = crews(site);
        List<Month> months = facade.months().stream()
                .map(month -> month(say, month, crews, month == facade.months().getFirst()))
                .toList();
        LocalDate due = facade.due();
        return new SeasonOfWall(
                new Chart(title, months, place(facade, due), due == null ? "" : say.it("due {0}", say.dateOfYear(due))),
                said(say, facade),
                facade.months().stream().map(month -> row(say, month)).toList());
    }

    static double crews(SiteOutlook site) {
        return site.crews().getOrDefault(drylap.kernel.Trade.WINDOW, 0.0);
    }

    private static Month month(Speech say, SiteOutlook.Month month, double crews, boolean first) {
        YearMonth at = month.month();
        return new Month(
                say.shortMonth(at),
                first || at.getMonthValue() == 1 ? String.valueOf(at.getYear()) : "",
                say.month(at),
                tenths(month.light() * crews),
                tenths(month.usable().value() * crews),
                tenths(month.usable10() * crews),
                tenths(month.usable90() * crews),
                tenths(month.installLeft()));
    }

    private static Row row(Speech say, SiteOutlook.Month month) {
        return new Row(
                say.month(month.month()),
                String.valueOf(month.days()),
                hours(month.light()),
                "%s \u00b1 %s"
                        .formatted(
                                hours(month.usable().value()),
                                hours(month.usable().error())),
                say.it("{0} to {1}", hours(month.usable10()), hours(month.usable90())),
                hours(month.installLeft()),
                hours(month.workLeft()));
    }

    private static double place(FacadeOutlook facade, @Nullable LocalDate due) {
        if (due == null) return -1;
        YearMonth first = facade.months().getFirst().month();
        double months = first.until(YearMonth.from(due), ChronoUnit.MONTHS)
                + (double) due.getDayOfMonth() / due.lengthOfMonth();
        return months < 0 || months > facade.months().size() ? -1 : Math.rint(months * 1000) / 1000;
    }

    private static List<String> said(Speech say, FacadeOutlook facade) {
        if (facade.left() == 0) return List.of(say.it("Nothing is left to do here."));
        String left = say.it(
                "Left to do, in crew-hours: install {0}, wrap {1}, clad {2}. A dry stretch counts from {3} h on.",
                hours(facade.installLeft()), hours(facade.wrapLeft()), hours(facade.cladLeft()), hours(facade.least()));
        String through = say.it(
                "All of it is through by {0} in 5 of 10 years, {1} in 8, {2} in 9.",
                date(say, facade.through5()), date(say, facade.through8()), date(say, facade.through9()));
        LocalDate due = facade.due();
        if (due == null || facade.inTime() == null) return List.of(left, through, say.it("No due date is set."));
        return List.of(
                left,
                through,
                say.it(
                        "{0}: {1} by the due date, {2}.",
                        SeasonWords.chance(say, facade.inTime()),
                        SeasonWords.likely(say, facade.inTime()),
                        say.dateOfYear(due)));
    }

    static String date(Speech say, @Nullable LocalDate date) {
        return date == null ? say.it("later than looked at") : say.dateOfYear(date);
    }

    static String hours(double hours) {
        return String.format(Locale.ROOT, hours < 10 ? "%.1f" : "%.0f", hours);
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}
