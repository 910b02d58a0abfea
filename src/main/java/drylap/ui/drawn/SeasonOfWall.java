package drylap.ui.drawn;

import drylap.season.SiteOutlook;
import drylap.season.SiteOutlook.FacadeOutlook;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One facade's season as it is drawn, said and listed. The drawing has crew-hours of the window crews that the site has, since it holds
 * them against work; the table has hours of one crew, as the files do.
 */
public record SeasonOfWall(Chart chart, List<String> said, List<Row> rows) {
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

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

    public static SeasonOfWall of(SiteOutlook site, FacadeOutlook facade, String title) {
        double crews = crews(site);
        List<Month> months = facade.months().stream()
                .map(month -> month(month, crews, month == facade.months().getFirst()))
                .toList();
        LocalDate due = facade.due();
        return new SeasonOfWall(
                new Chart(title, months, place(facade, due), due == null ? "" : "due " + DATE.format(due)),
                said(facade),
                facade.months().stream().map(SeasonOfWall::row).toList());
    }

    static double crews(SiteOutlook site) {
        return site.crews().getOrDefault(drylap.kernel.Trade.WINDOW, 0.0);
    }

    private static Month month(SiteOutlook.Month month, double crews, boolean first) {
        YearMonth at = month.month();
        return new Month(
                SHORT.format(at),
                first || at.getMonthValue() == 1 ? String.valueOf(at.getYear()) : "",
                MONTH.format(at),
                tenths(month.light() * crews),
                tenths(month.usable().value() * crews),
                tenths(month.usable10() * crews),
                tenths(month.usable90() * crews),
                tenths(month.installLeft()));
    }

    private static Row row(SiteOutlook.Month month) {
        return new Row(
                MONTH.format(month.month()),
                String.valueOf(month.days()),
                hours(month.light()),
                "%s \u00b1 %s"
                        .formatted(
                                hours(month.usable().value()),
                                hours(month.usable().error())),
                "%s to %s".formatted(hours(month.usable10()), hours(month.usable90())),
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

    private static List<String> said(FacadeOutlook facade) {
        if (facade.left() == 0) return List.of("Nothing is left to do here.");
        String left = "Left to do, in crew-hours: install %s, wrap %s, clad %s. A dry stretch counts from %s h on."
                .formatted(
                        hours(facade.installLeft()),
                        hours(facade.wrapLeft()),
                        hours(facade.cladLeft()),
                        hours(facade.least()));
        String through = "All of it is through by %s in 5 of 10 years, %s in 8, %s in 9."
                .formatted(date(facade.through5()), date(facade.through8()), date(facade.through9()));
        LocalDate due = facade.due();
        if (due == null || facade.inTime() == null) return List.of(left, through, "No due date is set.");
        return List.of(
                left,
                through,
                "%s: %s by the due date, %s."
                        .formatted(
                                SeasonWords.chance(facade.inTime()),
                                SeasonWords.likely(facade.inTime()),
                                DATE.format(due)));
    }

    static String date(@Nullable LocalDate date) {
        return date == null ? "later than looked at" : DATE.format(date);
    }

    static String hours(double hours) {
        return String.format(Locale.ROOT, hours < 10 ? "%.1f" : "%.0f", hours);
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}
