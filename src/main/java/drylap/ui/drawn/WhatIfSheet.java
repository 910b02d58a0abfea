package drylap.ui.drawn;

import drylap.planning.LedgerTerm;
import drylap.speech.Speech;
import drylap.whatif.Outcome.Handover;
import drylap.whatif.OutcomeFigures;
import drylap.whatif.Scenario;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToLongFunction;

/**
 * Outcomes side by side: what is left out, what it costs, when each facade is handed over.
 *
 * @param names the folder as it is first, then the scenarios
 */
public record WhatIfSheet(List<String> names, List<Group> groups) {
    /** @param name of the block of lines */
    public record Group(String name, List<Line> lines) {}

    /** @param cells one for each name */
    public record Line(String name, String detail, List<Cell> cells) {}

    /** @param more against the folder as it is, in words; empty in its own column */
    public record Cell(String value, String more, Trend trend) {}

    /** Words say it too. */
    public enum Trend {
        BETTER,
        WORSE,
        LEVEL
    }

    public static WhatIfSheet of(Speech say, FolderShown shown, List<OutcomeFigures> outcomes) {
        return new WhatIfSheet(
                outcomes.stream().map(one -> name(say, one.name())).toList(),
                List.of(
                        new Group(say.it("Work"), work(say, outcomes)),
                        new Group(say.it("Cost"), costs(say, outcomes)),
                        new Group(say.it("Hand-over"), handovers(say, shown, outcomes))));
    }

    /** Of the folder as it is, or as somebody typed it. */
    public static String name(Speech say, String scenario) {
        return scenario.equals(Scenario.AS_IT_IS) ? say.it(Scenario.AS_IT_IS) : scenario;
    }

    private static List<Line> work(Speech say, List<OutcomeFigures> outcomes) {
        return List.of(
                count(say, say.it("Tasks not planned"), "", outcomes, OutcomeFigures::notPlanned),
                count(
                        say,
                        say.it("Left out or open to rain"),
                        say.it("counts above every cost"),
                        outcomes,
                        OutcomeFigures::medium));
    }

    /** A term that is nought everywhere says nothing. */
    private static List<Line> costs(Speech say, List<OutcomeFigures> outcomes) {
        List<Line> lines = new ArrayList<>();
        lines.add(
                count(say, say.it("Sum"), say.it("a plan with a lower sum is better"), outcomes, OutcomeFigures::soft));
        for (LedgerTerm term : LedgerTerm.values())
            if (outcomes.stream().anyMatch(one -> one.cost(term) != 0))
                lines.add(count(
                        say, LedgerSheet.name(say, term), say.it(term.meaning()), outcomes, one -> one.cost(term)));
        lines.add(count(say, say.it("Days that crews come out"), "", outcomes, OutcomeFigures::crewDays));
        return lines;
    }

    private static Line count(
            Speech say,
            String name,
            String detail,
            List<OutcomeFigures> outcomes,
            ToLongFunction<OutcomeFigures> figure) {
        long base = figure.applyAsLong(outcomes.getFirst());
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < outcomes.size(); i++) {
            long value = figure.applyAsLong(outcomes.get(i));
            cells.add(new Cell(
                    Words.number(value), i == 0 ? "" : Words.difference(say, value - base), trend(value - base)));
        }
        return new Line(name, detail, cells);
    }

    private static Trend trend(long more) {
        if (more == 0) return Trend.LEVEL;
        return more < 0 ? Trend.BETTER : Trend.WORSE;
    }

    private static List<Line> handovers(Speech say, FolderShown shown, List<OutcomeFigures> outcomes) {
        List<Line> lines = new ArrayList<>();
        List<Handover> base = outcomes.getFirst().handovers();
        for (int i = 0; i < base.size(); i++) {
            int wall = i;
            lines.add(handover(
                    say,
                    shown,
                    outcomes.stream().map(one -> one.handovers().get(wall)).toList()));
        }
        return lines;
    }

    private static Line handover(Speech say, FolderShown shown, List<Handover> all) {
        Handover base = all.getFirst();
        ZoneId zone = shown.site(base.facade().site()).zone();
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell(value(say, base, zone), "", Trend.LEVEL));
        all.stream().skip(1).forEach(one -> cells.add(cell(say, base, one, zone)));
        String due = base.due() == null ? say.it("no day is due") : say.it("due {0}", say.day(base.due()));
        return new Line(shown.title(base.facade()), due, cells);
    }

    private static Cell cell(Speech say, Handover base, Handover one, ZoneId zone) {
        String value = value(say, one, zone);
        if (base.cladBy() == null || one.cladBy() == null) return fewer(say, base, one, value);
        long days = ChronoUnit.DAYS.between(date(base, zone), date(one, zone));
        if (days == 0)
            return new Cell(value, say.it(one.cladBy().equals(base.cladBy()) ? "as before" : "same day"), Trend.LEVEL);
        String more = say.it(
                days > 0
                        ? "{0, plural, one {# day} other {# days}} later"
                        : "{0, plural, one {# day} other {# days}} earlier",
                Math.abs(days));
        return new Cell(value, more, trend(days));
    }

    /** Where one of both has no day of hand-over. */
    private static Cell fewer(Speech say, Handover base, Handover one, String value) {
        long more = one.notPlanned() - (long) base.notPlanned();
        if (one.cladBy() != null) return new Cell(value, say.it("handed over now"), Trend.BETTER);
        if (base.cladBy() != null) return new Cell(value, say.it("not handed over now"), Trend.WORSE);
        return new Cell(value, Words.difference(say, more), trend(more));
    }

    private static String value(Speech say, Handover one, ZoneId zone) {
        if (one.notPlanned() > 0) return say.it("{0} not planned", one.notPlanned());
        if (one.cladBy() == null) return say.it("nothing to do");
        boolean late = one.due() != null && date(one, zone).isAfter(one.due());
        String moment = say.moment(one.cladBy(), zone);
        return late ? say.it("{0}, late", moment) : moment;
    }

    private static LocalDate date(Handover one, ZoneId zone) {
        return Objects.requireNonNull(one.cladBy()).atZone(zone).toLocalDate();
    }
}
