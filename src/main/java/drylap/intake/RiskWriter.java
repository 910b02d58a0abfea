package drylap.intake;

import drylap.intake.csv.Header;
import drylap.intake.csv.Lines;
import drylap.planning.JobFolder;
import drylap.risk.DateFigure;
import drylap.risk.Figure;
import drylap.risk.RiskReport;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes a report of the risk as files; each row names the trials and the seed, since the figures are theirs. */
public final class RiskWriter {
    private static final Header HANDOVERS = Header.of(
            "risk_handovers.csv",
            "site",
            "facade",
            "due",
            "planned",
            "p50",
            "p50_error_h",
            "p80",
            "p80_error_h",
            "p90",
            "p90_error_h",
            "in_time",
            "in_time_error",
            "unplanned",
            "never",
            "trials",
            "seed");
    private static final Header OPENINGS = Header.of(
            "risk_openings.csv",
            "opening",
            "site",
            "facade",
            "level",
            "crew",
            "planned_start",
            "rained_on",
            "rained_on_error",
            "wet",
            "wet_error",
            "covers",
            "trials",
            "seed");
    private static final Header CREW_DAYS =
            Header.of("risk_crew_days.csv", "crew", "date", "slips", "slips_error", "trials", "seed");
    private static final Header DAYS = Header.of(
            "risk_days.csv", "date", "rains", "rains_error", "hours_later", "hours_later_error", "trials", "seed");

    private final RiskReport report;
    private final Zones zones;

    private RiskWriter(RiskReport report, JobFolder folder) {
        this.report = report;
        zones = Zones.of(folder.sites());
    }

    /** @throws IOException where the target cannot be written */
    public static void write(RiskReport report, JobFolder folder, Path target) throws IOException {
        FolderWriter.write(new RiskWriter(report, folder).lines(), target);
    }

    /** The files by name, as bytes. */
    public static Map<String, byte[]> files(RiskReport report, JobFolder folder) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (Lines lines : new RiskWriter(report, folder).lines())
            files.put(lines.file(), lines.text().getBytes(StandardCharsets.UTF_8));
        return files;
    }

    private List<Lines> lines() {
        return List.of(handovers(), openings(), crewDays(), days());
    }

    private Lines handovers() {
        Lines lines = new Lines(HANDOVERS);
        for (RiskReport.Handover one : report.handovers()) {
            ZoneId zone = zones.of(one.facade().site());
            lines.add(
                    one.facade().site(),
                    one.facade().facade(),
                    one.due(),
                    Lines.time(one.planned(), zone),
                    Lines.time(one.p50().at(), zone),
                    hours(one.p50()),
                    Lines.time(one.p80().at(), zone),
                    hours(one.p80()),
                    Lines.time(one.p90().at(), zone),
                    hours(one.p90()),
                    value(one.inTime()),
                    error(one.inTime()),
                    one.unplanned(),
                    one.never(),
                    report.trials(),
                    report.seed());
        }
        return lines;
    }

    private Lines openings() {
        Lines lines = new Lines(OPENINGS);
        for (RiskReport.OpeningRisk one : report.openings())
            lines.add(
                    one.opening(),
                    one.facade().site(),
                    one.facade().facade(),
                    one.level(),
                    one.crew(),
                    Lines.time(one.plannedStart(), zones.of(one.facade().site())),
                    value(one.rainedOn()),
                    error(one.rainedOn()),
                    value(one.wet()),
                    error(one.wet()),
                    rounded(one.covers()),
                    report.trials(),
                    report.seed());
        return lines;
    }

    private Lines crewDays() {
        Lines lines = new Lines(CREW_DAYS);
        for (RiskReport.CrewDayRisk one : report.crewDays())
            lines.add(one.crew(), one.date(), value(one.slips()), error(one.slips()), report.trials(), report.seed());
        return lines;
    }

    private Lines days() {
        Lines lines = new Lines(DAYS);
        for (RiskReport.DayRisk one : report.days())
            lines.add(
                    one.date(),
                    value(one.rains()),
                    error(one.rains()),
                    value(one.hoursLater()),
                    error(one.hoursLater()),
                    report.trials(),
                    report.seed());
        return lines;
    }

    private static @Nullable String hours(DateFigure figure) {
        return figure.error() == null ? null : rounded(figure.error().toMinutes() / 60.0);
    }

    private static @Nullable String value(@Nullable Figure figure) {
        return figure == null ? null : rounded(figure.value());
    }

    private static @Nullable String error(@Nullable Figure figure) {
        return figure == null ? null : rounded(figure.error());
    }

    private static String rounded(double value) {
        return Lines.number(Math.rint(value * 1e4) / 1e4);
    }
}
