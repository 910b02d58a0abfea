package drylap.ui.drawn;

import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.risk.OddsState.Odds;
import drylap.risk.RiskReport;
import drylap.risk.RiskReport.ClimateUsed;
import drylap.risk.RiskReport.DayRisk;
import drylap.risk.RiskReport.Handover;
import drylap.risk.RiskReport.OpeningRisk;
import drylap.risk.RiskReport.Totals;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The odds of a plan in words.
 *
 * @param reckoned when and from what
 * @param changed what is otherwise by now; empty: they hold
 * @param totals what a trial brings over all sites; empty where not all are the person's
 * @param rests what was assumed
 */
public record OddsSheet(
        String reckoned,
        String changed,
        List<Wall> walls,
        List<OpeningLine> openings,
        List<String> days,
        List<String> totals,
        List<Sky> skies,
        List<String> rests) {
    /** @param site and the facade's name; {@code lines} of its days, {@code due} in words, empty where there is no date */
    public record Wall(String title, List<String> lines, String due) {}

    public record OpeningLine(OpeningId opening, String words) {}

    /** Where the weather of a site comes from. */
    public record Sky(String site, String words) {}

    public static OddsSheet of(FolderShown shown, Odds odds) {
        RiskReport report = odds.report();
        ZoneId zone = shown.folder().sites().getFirst().zone();
        return new OddsSheet(
                "Reckoned %s from %s trials (seed %d), from how the job stood then. What is still to do goes on from %s."
                        .formatted(
                                Words.moment(odds.reckonedAt(), zone),
                                Words.number(report.trials()),
                                report.seed(),
                                Words.moment(report.from(), zone)),
                odds.changed().stream().sorted().map(OddsWords::part).collect(Collectors.joining("; ")),
                report.handovers().stream().map(one -> wall(shown, report, one)).toList(),
                first(report.openings()).stream()
                        .map(one -> opening(shown, report, one))
                        .toList(),
                first(report.days()).stream().map(one -> day(report, one)).toList(),
                report.totals() == null ? List.of() : totals(report.totals()),
                report.climates().stream().map(one -> sky(shown, one)).toList(),
                rests(shown));
    }

    private static Wall wall(FolderShown shown, RiskReport report, Handover one) {
        ZoneId zone = shown.site(one.facade().site()).zone();
        List<String> lines = new ArrayList<>(List.of(
                "In 5 of 10 cases " + OddsWords.by(one.p50(), zone),
                "In 8 of 10 cases " + OddsWords.by(one.p80(), zone),
                "In 9 of 10 cases " + OddsWords.by(one.p90(), zone)));
        if (one.unplanned() > 0)
            lines.add("%d of its claddings are in no plan: with them it is later than all this"
                    .formatted(one.unplanned()));
        return new Wall(shown.title(one.facade()), lines, due(report, one));
    }

    private static String due(RiskReport report, Handover one) {
        if (one.due() == null || one.inTime() == null) return "";
        return "Due %s: kept in %s"
                .formatted(OddsWords.day(one.due()), OddsWords.chance(one.inTime(), report.trials()));
    }

    private static OpeningLine opening(FolderShown shown, RiskReport report, OpeningRisk one) {
        return new OpeningLine(
                one.opening(),
                "%s, level %d, %s of crew %s: gets wet while open in %s, is rained on in %s"
                        .formatted(
                                shown.title(one.facade()),
                                one.level(),
                                Words.moment(
                                        one.plannedStart(),
                                        shown.site(one.facade().site()).zone()),
                                one.crew(),
                                OddsWords.chance(one.wet(), report.trials()),
                                OddsWords.chance(one.rainedOn(), report.trials())));
    }

    private static String day(RiskReport report, DayRisk one) {
        String rains = "%s: rain while crews are there in %s"
                .formatted(OddsWords.day(one.date()), OddsWords.chance(one.rains(), report.trials()));
        if (one.hoursLater() == null) return rains;
        return rains + "; then the hand-overs together come %s h later".formatted(OddsWords.mean(one.hoursLater()));
    }

    private static List<String> totals(Totals totals) {
        return List.of(
                "%s covers put on".formatted(OddsWords.mean(totals.covers())),
                "%s openings get wet while open".formatted(OddsWords.mean(totals.wetOpenings())),
                "%s crew-days are worked where %d are planned"
                        .formatted(OddsWords.mean(totals.daysCome()), totals.daysPlanned()));
    }

    private static Sky sky(FolderShown shown, ClimateUsed one) {
        Instant end = one.forecastEnd();
        String told = end == null
                ? "no forecast; all of its weather is drawn from its climate"
                : "by the forecast until %s, from its climate after that"
                        .formatted(Words.moment(end, shown.site(one.site()).zone()));
        return new Sky(shown.site(one.site()).name(), "%s (%s)".formatted(told, one.words()));
    }

    private static List<String> rests(FolderShown shown) {
        return List.of(
                "Each crew keeps its order, and nothing begins before its planned time; what is late pushes what follows. "
                        + "A crew sees rain coming %s min ahead, covers what stands open, and ends what it has begun, past its shift too."
                                .formatted(value(shown, Rule.RAIN_WARNING_MIN)),
                "Work takes %s to %s times the minutes of the labour table, most often the minutes themselves. "
                                .formatted(value(shown, Rule.DURATION_BEST), value(shown, Rule.DURATION_WORST))
                        + "That spread is assumed until it is set from the contractor's own log; each task scatters for itself.",
                "Windows that are not there yet come up to %s days late. Sites up to %s km apart share their rain."
                        .formatted(value(shown, Rule.DELIVERY_WORST_DAYS), value(shown, Rule.WEATHER_CELL_KM)),
                "After its last shift a crew goes on as in its last seven days, for six weeks.");
    }

    private static String value(FolderShown shown, Rule rule) {
        List<String> values = shown.folder().sites().stream()
                .map(site -> shown.folder().rules().at(site.id()).value(rule))
                .distinct()
                .sorted()
                .map(OddsSheet::plain)
                .toList();
        return String.join(" or ", values);
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.2f", value);
    }

    private static <T> List<T> first(List<T> all) {
        return all.subList(0, Math.min(RiskReport.DRIVERS, all.size()));
    }
}
