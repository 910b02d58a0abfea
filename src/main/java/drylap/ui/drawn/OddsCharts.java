package drylap.ui.drawn;

import drylap.risk.DateFigure;
import drylap.risk.RiskReport;
import drylap.risk.RiskReport.CrewDayRisk;
import drylap.risk.RiskReport.Handover;
import drylap.risk.RiskReport.OpeningRisk;
import drylap.speech.Speech;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the charts of a report are given. */
public record OddsCharts(List<HandoverChart> handovers, CrewDays crewDays, Wet wet) {
    /** More bars than these nobody reads; the table has all. */
    private static final int MOST_BARS = 12;

    /** A day, and where its weather comes from. */
    public record Day(String label, String sky) {}

    public record CrewDays(List<Day> days, List<CrewRow> crews) {}

    /** @param cells one for each day, null where the crew is not planned */
    public record CrewRow(String crew, List<@Nullable Cell> cells) {}

    public record Cell(double chance, double error, String words) {}

    /** @param more openings than are drawn */
    public record Wet(List<Bar> openings, int more) {}

    public record Bar(String opening, String place, double wet, double error, double rainedOn, String words) {}

    public static OddsCharts of(Speech say, FolderShown shown, RiskReport report) {
        var tables = new OddsTables(say, shown, report);
        return new OddsCharts(
                report.handovers().stream()
                        .map(one -> HandoverChart.of(
                                say,
                                shown,
                                one,
                                day -> sky(tables.weather(one.facade().site(), day))))
                        .toList(),
                crewDays(say, report, tables),
                wet(say, shown, report));
    }

    /** The three days of a facade, as the words beside the chart have them. */
    static List<DateFigure> figures(Handover one) {
        return List.of(one.p50(), one.p80(), one.p90());
    }

    private static String sky(SkySource source) {
        return source.name().toLowerCase(Locale.ROOT);
    }

    private static CrewDays crewDays(Speech say, RiskReport report, OddsTables tables) {
        SortedMap<LocalDate, SkySource> days = new TreeMap<>();
        for (CrewDayRisk one : report.crewDays())
            days.merge(one.date(), tables.weather(one), (a, b) -> a.compareTo(b) < 0 ? a : b);
        Map<String, Map<LocalDate, CrewDayRisk>> crews = report.crewDays().stream()
                .collect(Collectors.groupingBy(
                        one -> one.crew().value(),
                        TreeMap::new,
                        Collectors.toMap(CrewDayRisk::date, Function.identity())));
        return new CrewDays(
                days.entrySet().stream()
                        .map(day -> new Day(
                                "%s %d"
                                        .formatted(
                                                say.weekday(day.getKey()),
                                                day.getKey().getDayOfMonth()),
                                sky(day.getValue())))
                        .toList(),
                crews.entrySet().stream()
                        .map(crew -> new CrewRow(
                                crew.getKey(),
                                days.keySet().stream()
                                        .map(day -> cell(
                                                say, report, crew.getValue().get(day)))
                                        .toList()))
                        .toList());
    }

    private static @Nullable Cell cell(Speech say, RiskReport report, @Nullable CrewDayRisk one) {
        if (one == null) return null;
        return new Cell(one.slips().value(), one.slips().error(), OddsWords.chance(say, one.slips(), report.trials()));
    }

    private static Wet wet(Speech say, FolderShown shown, RiskReport report) {
        List<OpeningRisk> all = report.openings();
        return new Wet(
                all.stream()
                        .limit(MOST_BARS)
                        .map(one -> bar(say, shown, report, one))
                        .toList(),
                Math.max(0, all.size() - MOST_BARS));
    }

    private static Bar bar(Speech say, FolderShown shown, RiskReport report, OpeningRisk one) {
        ZoneId zone = shown.site(one.facade().site()).zone();
        return new Bar(
                one.opening().value(),
                "%s, %s"
                        .formatted(
                                shown.title(one.facade()),
                                say.day(one.plannedStart().atZone(zone).toLocalDate())),
                one.wet().value(),
                one.wet().error(),
                one.rainedOn().value(),
                OddsWords.chance(say, one.wet(), report.trials()));
    }
}
