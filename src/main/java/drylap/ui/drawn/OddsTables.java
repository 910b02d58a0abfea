package drylap.ui.drawn;

import drylap.kernel.SiteId;
import drylap.risk.DateFigure;
import drylap.risk.Figure;
import drylap.risk.RiskReport;
import drylap.risk.RiskReport.ClimateUsed;
import drylap.risk.RiskReport.CrewDayRisk;
import drylap.risk.RiskReport.DayChance;
import drylap.risk.RiskReport.Handover;
import drylap.risk.RiskReport.OpeningRisk;
import drylap.speech.Speech;
import drylap.ui.drawn.OddsTable.Cell;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The tables of a report: what its charts show, and the days of the hand-overs. */
public final class OddsTables {
    private static final Cell NONE = Cell.of("");

    private final Speech say;
    private final FolderShown shown;
    private final RiskReport report;
    private final Map<SiteId, ClimateUsed> climates;

    public OddsTables(Speech say, FolderShown shown, RiskReport report) {
        this.say = say;
        this.shown = shown;
        this.report = report;
        climates = report.climates().stream().collect(Collectors.toMap(ClimateUsed::site, Function.identity()));
    }

    public OddsTable handovers() {
        return new OddsTable(
                "odds-hand-overs.csv",
                say.it("Days by which each facade is handed over"),
                List.of(
                        say.it("Site"),
                        say.it("Facade"),
                        say.it("Due"),
                        say.it("Planned"),
                        say.it("5 cases of 10 by"),
                        "±, h",
                        say.it("8 of 10 by"),
                        say.it("±, h (8 of 10)"),
                        say.it("9 of 10 by"),
                        say.it("±, h (9 of 10)"),
                        say.it("Due day kept, of 100"),
                        say.it("±, of 100"),
                        say.it("Claddings not planned")),
                report.handovers().stream().map(this::handover).toList());
    }

    private List<Cell> handover(Handover one) {
        ZoneId zone = zone(one);
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(shown.site(one.facade().site()).name()),
                Cell.of(one.facade().facade()),
                one.due() == null ? NONE : day(one.due()),
                moment(one.planned(), zone)));
        for (DateFigure figure : List.of(one.p50(), one.p80(), one.p90())) {
            cells.add(figure.at() == null ? Cell.of(say.it(OddsWords.LATER)) : moment(figure.at(), zone));
            cells.add(figure.error() == null ? NONE : Cell.of(OddsWords.hours(figure.error())));
        }
        cells.addAll(chance(one.inTime()));
        cells.add(Cell.of(Integer.toString(one.unplanned())));
        return cells;
    }

    public OddsTable byDay() {
        return new OddsTable(
                "odds-hand-over-by-day.csv",
                say.it("Chance that a facade is handed over by the end of a day"),
                List.of(
                        say.it("Site"),
                        say.it("Facade"),
                        say.it("Day"),
                        say.it("Handed over by its end, of 100"),
                        say.it("±, of 100"),
                        say.it("Weather of that day")),
                report.handovers().stream().flatMap(one -> days(one).stream()).toList());
    }

    private List<List<Cell>> days(Handover one) {
        List<List<Cell>> rows = new ArrayList<>();
        double until = 0;
        for (DayChance day : one.spread()) {
            until += day.chance();
            rows.add(join(
                    List.of(
                            Cell.of(shown.site(one.facade().site()).name()),
                            Cell.of(one.facade().facade()),
                            day(day.day())),
                    chance(share(until)),
                    List.of(Cell.of(
                            say.it(weather(one.facade().site(), day.day()).words())))));
        }
        return rows;
    }

    /** A share of the trials, with its standard error. */
    private Figure share(double value) {
        double p = Math.min(1, value);
        return new Figure(p, Math.sqrt(p * (1 - p) / report.trials()));
    }

    public OddsTable crewDays() {
        return new OddsTable(
                "odds-crew-days.csv",
                say.it("Chance that something planned for a crew-day is not done on it"),
                List.of(
                        say.it("Crew"),
                        say.it("Day"),
                        say.it("Not got through, of 100"),
                        say.it("±, of 100"),
                        say.it("Weather of that day")),
                report.crewDays().stream().map(this::crewDay).toList());
    }

    private List<Cell> crewDay(CrewDayRisk one) {
        return join(
                List.of(Cell.of(one.crew().value()), day(one.date())),
                chance(one.slips()),
                List.of(Cell.of(say.it(weather(one).words()))));
    }

    /** Of several sites the one of which least is told. */
    SkySource weather(CrewDayRisk one) {
        return one.sites().stream()
                .map(site -> weather(site, one.date()))
                .min(Comparator.naturalOrder())
                .orElse(SkySource.CLIMATE);
    }

    SkySource weather(SiteId site, LocalDate day) {
        ClimateUsed climate = climates.get(site);
        return climate == null
                ? SkySource.CLIMATE
                : OddsWords.weather(day, climate, shown.site(site).zone());
    }

    public OddsTable openings() {
        return new OddsTable(
                "odds-openings.csv",
                say.it("Chance that an opening gets wet while it stands open"),
                List.of(
                        say.it("Opening"),
                        say.it("Site"),
                        say.it("Facade"),
                        say.it("Level"),
                        say.it("Crew"),
                        say.it("Planned"),
                        say.it("Gets wet, of 100"),
                        say.it("±, of 100"),
                        say.it("Rained on, of 100"),
                        say.it("±, of 100 (rained on)"),
                        say.it("Covers put on in a trial")),
                report.openings().stream().map(this::opening).toList());
    }

    private List<Cell> opening(OpeningRisk one) {
        SiteId site = one.facade().site();
        return join(
                List.of(
                        Cell.of(one.opening().value()),
                        Cell.of(shown.site(site).name()),
                        Cell.of(one.facade().facade()),
                        Cell.of(Integer.toString(one.level())),
                        Cell.of(one.crew().value()),
                        moment(one.plannedStart(), shown.site(site).zone())),
                chance(one.wet()),
                chance(one.rainedOn()),
                List.of(Cell.of(String.format(Locale.ROOT, "%.2f", one.covers()))));
    }

    private ZoneId zone(Handover one) {
        return shown.site(one.facade().site()).zone();
    }

    private static List<Cell> chance(@Nullable Figure figure) {
        if (figure == null) return List.of(NONE, NONE);
        return List.of(Cell.of(OddsWords.percent(figure.value())), Cell.of(OddsWords.percent(figure.error())));
    }

    private Cell day(LocalDate date) {
        return new Cell(say.day(date), date.toString());
    }

    private Cell moment(Instant at, ZoneId zone) {
        return new Cell(
                say.moment(at, zone),
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                        at.atZone(zone).toOffsetDateTime().truncatedTo(ChronoUnit.MINUTES)));
    }

    @SafeVarargs
    private static List<Cell> join(List<Cell>... parts) {
        return java.util.Arrays.stream(parts).flatMap(List::stream).toList();
    }
}
