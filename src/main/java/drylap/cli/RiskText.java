package drylap.cli;

import drylap.planning.JobFolder;
import drylap.risk.DateFigure;
import drylap.risk.Figure;
import drylap.risk.RiskReport;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A report of the risk as tables. */
final class RiskText {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final int MOST_CREW_DAYS = 10;

    private final JobFolder folder;
    private final RiskReport report;

    RiskText(JobFolder folder, RiskReport report) {
        this.folder = folder;
        this.report = report;
    }

    void print(PrintWriter out) {
        out.printf("%,d trials, seed %d; ± is one standard error%n%n", report.trials(), report.seed());
        handovers(out);
        openings(out);
        days(out);
        crewDays(out);
        RiskReport.Totals totals = Objects.requireNonNull(report.totals());
        out.printf(
                "%nIn a trial %s covers are put on, %s openings get wet while open, and %s crew-days are worked where %d are planned.%n",
                mean(totals.covers()), mean(totals.wetOpenings()), mean(totals.daysCome()), totals.daysPlanned());
        report.climates().forEach(climate -> out.println(beyond(climate)));
    }

    private void handovers(PrintWriter out) {
        String row = "%-16s  %-10s  %-16s  %-23s  %-23s  %-23s  %s%n";
        out.printf(row, "facade clad by", "due", "planned", "5 cases of 10", "8 of 10", "9 of 10", "in time");
        for (RiskReport.Handover one : report.handovers()) {
            ZoneId zone = folder.zone(one.facade().site());
            out.printf(
                    row,
                    one.facade(),
                    one.due() == null ? "" : one.due(),
                    when(one.planned(), zone),
                    date(one.p50(), zone),
                    date(one.p80(), zone),
                    date(one.p90(), zone),
                    chance(one.inTime()) + left(one));
        }
    }

    private static String left(RiskReport.Handover one) {
        return one.unplanned() == 0 ? "" : " (%d claddings not planned)".formatted(one.unplanned());
    }

    private void openings(PrintWriter out) {
        out.printf("%nOpenings most likely to get wet while open:%n");
        for (RiskReport.OpeningRisk one : first(report.openings()))
            out.printf(
                    "  %-10s %s level %d, %s %s: wet %s, rained on %s, covers %.2f%n",
                    one.opening(),
                    one.facade(),
                    one.level(),
                    one.crew(),
                    when(one.plannedStart(), folder.zone(one.facade().site())),
                    chance(one.wet()),
                    chance(one.rainedOn()),
                    one.covers());
    }

    private void days(PrintWriter out) {
        out.printf("%nDays that drive the hand-overs:%n");
        for (RiskReport.DayRisk one : first(report.days()))
            out.printf(
                    "  %-10s rain on a site at work %s; then the hand-overs together come %s h later%n",
                    DAY.format(one.date()),
                    chance(one.rains()),
                    one.hoursLater() == null ? "?" : mean(one.hoursLater()));
    }

    private void crewDays(PrintWriter out) {
        out.printf("%nCrew-days most likely not to get through:%n");
        report.crewDays().stream()
                .sorted(java.util.Comparator.comparing(
                        (RiskReport.CrewDayRisk one) -> -one.slips().value()))
                .limit(MOST_CREW_DAYS)
                .forEach(one ->
                        out.printf("  %-12s %-10s %s%n", one.crew(), DAY.format(one.date()), chance(one.slips())));
    }

    private static <T> List<T> first(List<T> all) {
        return all.subList(0, Math.min(RiskReport.DRIVERS, all.size()));
    }

    private String beyond(RiskReport.ClimateUsed climate) {
        Instant end = climate.forecastEnd();
        return "%s beyond the forecast (%s): %s"
                .formatted(
                        climate.site(),
                        end == null ? "there is none" : "ends " + when(end, folder.zone(climate.site())),
                        climate.words());
    }

    private static String date(DateFigure figure, ZoneId zone) {
        if (figure.at() == null) return "later than looked at";
        String error = figure.error() == null
                ? ""
                : " ±%.1f h".formatted(figure.error().toMinutes() / 60.0);
        return when(figure.at(), zone) + error;
    }

    private static String when(Instant at, ZoneId zone) {
        return WHEN.format(at.atZone(zone));
    }

    private static String chance(@Nullable Figure figure) {
        return figure == null
                ? ""
                : String.format(Locale.ROOT, "%.1f ± %.1f %%", figure.value() * 100, figure.error() * 100);
    }

    private static String mean(Figure figure) {
        return String.format(Locale.ROOT, "%.1f ± %.1f", figure.value(), figure.error());
    }
}
