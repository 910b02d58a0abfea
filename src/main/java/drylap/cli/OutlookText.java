package drylap.cli;

import drylap.kernel.Trade;
import drylap.planning.JobFolder;
import drylap.season.Estimate;
import drylap.season.Season;
import drylap.season.SiteOutlook;
import drylap.season.SiteOutlook.FacadeOutlook;
import drylap.season.SiteOutlook.Month;
import drylap.season.SiteOutlook.OneMore;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Outlooks of seasons as tables. */
final class OutlookText {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH);

    private final JobFolder folder;
    private final List<SiteOutlook> outlooks;

    OutlookText(JobFolder folder, List<SiteOutlook> outlooks) {
        this.folder = folder;
        this.outlooks = outlooks;
    }

    void print(PrintWriter out) {
        for (SiteOutlook one : outlooks) site(out, one);
        out.printf(
                Locale.ROOT,
                "One more crew pays from the first month in which, for that month alone, it adds %.0f of 100 to the "
                        + "chance that all is in time.%n"
                        + "Left out: water tests and curing, changes of facade and level, absences and holidays, "
                        + "deliveries that come late, work that takes longer than its labour row.%n",
                Season.PAYS * 100);
    }

    private void site(PrintWriter out, SiteOutlook site) {
        out.printf(
                Locale.ROOT,
                "%s: %,d years, seed %d; \u00b1 is one standard error; crews here: %s%n",
                site.site(),
                site.years(),
                site.seed(),
                site.crews().entrySet().stream()
                        .sorted(java.util.Map.Entry.comparingByKey())
                        .map(entry -> String.format(
                                Locale.ROOT, "%s %.2f", entry.getKey().code(), entry.getValue()))
                        .collect(Collectors.joining(", ")));
        out.println(climate(site));
        facades(out, site);
        site.facades().forEach(facade -> months(out, facade));
        site.oneMore().forEach(more -> oneMore(out, more));
        out.println();
    }

    private String climate(SiteOutlook site) {
        Instant end = site.forecastEnd();
        return "Beyond the forecast (%s): %s%s"
                .formatted(
                        end == null ? "there is none" : "ends " + WHEN.format(end.atZone(folder.zone(site.site()))),
                        site.climate(),
                        site.assumed() ? "  [assumed climate]" : "");
    }

    private static void facades(PrintWriter out, SiteOutlook site) {
        String row = "%-12s %10s %8s %8s %8s  %-14s %-14s %-14s %s%n";
        out.printf(row, "facade", "due", "install", "wrap", "clad", "5 years of 10", "8 of 10", "9 of 10", "in time");
        for (FacadeOutlook one : site.facades())
            out.printf(
                    row,
                    one.facade().facade(),
                    one.due() == null ? "" : one.due(),
                    hours(one.installLeft()),
                    hours(one.wrapLeft()),
                    hours(one.cladLeft()),
                    date(one.through5()),
                    date(one.through8()),
                    date(one.through9()),
                    chance(one.inTime()));
        if (site.inTime() != null) out.printf("All facades with a due date in time: %s%n", chance(site.inTime()));
    }

    private static void months(PrintWriter out, FacadeOutlook facade) {
        out.printf(
                Locale.ROOT,
                "%nFacade %s, hours of one crew; a dry stretch counts from %.1f h on%n",
                facade.facade().facade(),
                facade.least());
        String row = "  %-9s %5s %7s %14s %20s %14s %12s%n";
        out.printf(row, "month", "days", "light", "usable", "1, 5, 9 years of 10", "install left", "all left");
        for (Month month : facade.months())
            out.printf(
                    row,
                    MONTH.format(month.month()),
                    month.days(),
                    hours(month.light()),
                    String.format(
                            Locale.ROOT,
                            "%.1f \u00b1 %.1f",
                            month.usable().value(),
                            month.usable().error()),
                    String.format(
                            Locale.ROOT, "%.0f, %.0f, %.0f", month.usable10(), month.usable50(), month.usable90()),
                    hours(month.installLeft()),
                    hours(month.workLeft()));
    }

    private static void oneMore(PrintWriter out, OneMore more) {
        out.printf(
                Locale.ROOT,
                "%nOne more %s crew: last facade %s days earlier, chance in time %s, crew-days %s (cost %.0f), late "
                        + "hand-over saved (cost %.0f); %s%n",
                word(more.trade()),
                mean(more.daysEarlier()),
                more.gained() == null ? "not asked for" : "up by " + chance(more.gained()),
                mean(more.crewDays()),
                more.crewDayCost(),
                more.lateSaved(),
                pays(more.pays()));
    }

    private static String word(Trade trade) {
        return trade.code();
    }

    private static String pays(@Nullable YearMonth month) {
        return month == null ? "pays in no month" : "pays from " + MONTH.format(month);
    }

    private static String date(@Nullable LocalDate date) {
        return date == null ? "later" : date.toString();
    }

    private static String hours(double hours) {
        return String.format(Locale.ROOT, "%.1f h", hours);
    }

    private static String chance(@Nullable Estimate figure) {
        return figure == null
                ? ""
                : String.format(Locale.ROOT, "%.1f \u00b1 %.1f %%", figure.value() * 100, figure.error() * 100);
    }

    private static String mean(Estimate figure) {
        return String.format(Locale.ROOT, "%.1f \u00b1 %.1f", figure.value(), figure.error());
    }
}
