package drylap.ui.drawn;

import drylap.climate.ClimateSource;
import drylap.kernel.OpeningId;
import drylap.kernel.Rule;
import drylap.risk.OddsState.Odds;
import drylap.risk.RiskReport;
import drylap.risk.RiskReport.ClimateUsed;
import drylap.risk.RiskReport.DayRisk;
import drylap.risk.RiskReport.Handover;
import drylap.risk.RiskReport.OpeningRisk;
import drylap.risk.RiskReport.Totals;
import drylap.speech.Speech;
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

    public static OddsSheet of(Speech say, FolderShown shown, Odds odds) {
        RiskReport report = odds.report();
        ZoneId zone = shown.folder().sites().getFirst().zone();
        return new OddsSheet(
                say.it(
                        "Reckoned {0} from {1} trials (seed {2}), from how the job stood then. What is still to do goes on from {3}.",
                        say.moment(odds.reckonedAt(), zone),
                        Words.number(report.trials()),
                        report.seed(),
                        say.moment(report.from(), zone)),
                odds.changed().stream()
                        .sorted()
                        .map(part -> OddsWords.part(say, part))
                        .collect(Collectors.joining("; ")),
                report.handovers().stream()
                        .map(one -> wall(say, shown, report, one))
                        .toList(),
                first(report.openings()).stream()
                        .map(one -> opening(say, shown, report, one))
                        .toList(),
                first(report.days()).stream().map(one -> day(say, report, one)).toList(),
                report.totals() == null ? List.of() : totals(say, report.totals()),
                report.climates().stream().map(one -> sky(say, shown, one)).toList(),
                rests(say, shown));
    }

    private static Wall wall(Speech say, FolderShown shown, RiskReport report, Handover one) {
        ZoneId zone = shown.site(one.facade().site()).zone();
        List<String> lines = new ArrayList<>(List.of(
                OddsWords.by(say, 5, one.p50(), zone),
                OddsWords.by(say, 8, one.p80(), zone),
                OddsWords.by(say, 9, one.p90(), zone)));
        if (one.unplanned() > 0)
            lines.add(say.it(
                    "{0} of its claddings are in no plan: with them it is later than all this", one.unplanned()));
        return new Wall(shown.title(one.facade()), lines, due(say, report, one));
    }

    private static String due(Speech say, RiskReport report, Handover one) {
        if (one.due() == null || one.inTime() == null) return "";
        return say.it("Due {0}: kept in {1}", say.day(one.due()), OddsWords.chance(say, one.inTime(), report.trials()));
    }

    private static OpeningLine opening(Speech say, FolderShown shown, RiskReport report, OpeningRisk one) {
        return new OpeningLine(
                one.opening(),
                say.it(
                        "{0}, level {1}, {2} of crew {3}: gets wet while open in {4}, is rained on in {5}",
                        shown.title(one.facade()),
                        one.level(),
                        say.moment(
                                one.plannedStart(),
                                shown.site(one.facade().site()).zone()),
                        one.crew(),
                        OddsWords.chance(say, one.wet(), report.trials()),
                        OddsWords.chance(say, one.rainedOn(), report.trials())));
    }

    private static String day(Speech say, RiskReport report, DayRisk one) {
        String rains = OddsWords.chance(say, one.rains(), report.trials());
        if (one.hoursLater() == null)
            return say.it("{0}: rain while crews are there in {1}", say.day(one.date()), rains);
        return say.it(
                "{0}: rain while crews are there in {1}; then the hand-overs together come {2} h later",
                say.day(one.date()), rains, OddsWords.mean(one.hoursLater()));
    }

    private static List<String> totals(Speech say, Totals totals) {
        return List.of(
                say.it("{0} covers put on", OddsWords.mean(totals.covers())),
                say.it("{0} openings get wet while open", OddsWords.mean(totals.wetOpenings())),
                say.it(
                        "{0} crew-days are worked where {1} are planned",
                        OddsWords.mean(totals.daysCome()), totals.daysPlanned()));
    }

    private static Sky sky(Speech say, FolderShown shown, ClimateUsed one) {
        Instant end = one.forecastEnd();
        String told = end == null
                ? say.it("no forecast; all of its weather is drawn from its climate")
                : say.it(
                        "by the forecast until {0}, from its climate after that",
                        say.moment(end, shown.site(one.site()).zone()));
        return new Sky(
                shown.site(one.site()).name(), "%s (%s)".formatted(told, say.it(ClimateSource.read(one.words()))));
    }

    private static List<String> rests(Speech say, FolderShown shown) {
        return List.of(
                say.it(
                        "Each crew keeps its order, and nothing begins before its planned time; what is late pushes what follows. "
                                + "A crew sees rain coming {0} min ahead, covers what stands open, and ends what it has begun, past its shift too.",
                        value(say, shown, Rule.RAIN_WARNING_MIN)),
                say.it(
                        "Work takes {0} to {1} times the minutes of the labour table, most often the minutes themselves. "
                                + "That spread is assumed until it is set from the contractor's own log; each task scatters for itself.",
                        value(say, shown, Rule.DURATION_BEST), value(say, shown, Rule.DURATION_WORST)),
                say.it(
                        "Windows that are not there yet come up to {0} days late. Sites up to {1} km apart share their rain.",
                        value(say, shown, Rule.DELIVERY_WORST_DAYS), value(say, shown, Rule.WEATHER_CELL_KM)),
                say.it("After its last shift a crew goes on as in its last seven days, for six weeks."));
    }

    private static String value(Speech say, FolderShown shown, Rule rule) {
        return shown.folder().sites().stream()
                .map(site -> shown.folder().rules().at(site.id()).value(rule))
                .distinct()
                .sorted()
                .map(OddsSheet::plain)
                .reduce((some, another) -> say.it("{0} or {1}", some, another))
                .orElse("");
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
