package drylap.ui.drawn;

import drylap.planning.LedgerTerm;
import drylap.speech.Speech;
import drylap.whatif.Outcome.Handover;
import drylap.whatif.OutcomeFigures;
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

    public static WhatIfSheet of(FolderShown shown, List<OutcomeFigures> outcomes) {
        return new WhatIfSheet(
                outcomes.stream().map(OutcomeFigures::name).toList(),
                List.of(
                        new Group("Work", work(outcomes)),
                        new Group("Cost", costs(outcomes)),
                        new Group("Hand-over", handovers(shown, outcomes))));
    }

    private static List<Line> work(List<OutcomeFigures> outcomes) {
        return List.of(
                count("Tasks not planned", "", outcomes, OutcomeFigures::notPlanned),
                count("Left out or open to rain", "counts above every cost", outcomes, OutcomeFigures::medium));
    }

    /** A term that is nought everywhere says nothing. */
    private static List<Line> costs(List<OutcomeFigures> outcomes) {
        List<Line> lines = new ArrayList<>();
        lines.add(count("Sum", "a plan with a lower sum is better", outcomes, OutcomeFigures::soft));
        for (LedgerTerm term : LedgerTerm.values())
            if (outcomes.stream().anyMatch(one -> one.cost(term) != 0))
                lines.add(
                        count(LedgerSheet.name(Speech.ENGLISH, term), term.meaning(), outcomes, one -> one.cost(term)));
        lines.add(count("Days that crews come out", "", outcomes, OutcomeFigures::crewDays));
        return lines;
    }

    private static Line count(
            String name, String detail, List<OutcomeFigures> outcomes, ToLongFunction<OutcomeFigures> figure) {
        long base = figure.applyAsLong(outcomes.getFirst());
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < outcomes.size(); i++) {
            long value = figure.applyAsLong(outcomes.get(i));
            cells.add(new Cell(Words.number(value), i == 0 ? "" : Words.difference(value - base), trend(value - base)));
        }
        return new Line(name, detail, cells);
    }

    private static Trend trend(long more) {
        if (more == 0) return Trend.LEVEL;
        return more < 0 ? Trend.BETTER : Trend.WORSE;
    }

    private static List<Line> handovers(FolderShown shown, List<OutcomeFigures> outcomes) {
        List<Line> lines = new ArrayList<>();
        List<Handover> base = outcomes.getFirst().handovers();
        for (int i = 0; i < base.size(); i++) {
            int wall = i;
            lines.add(handover(
                    shown,
                    outcomes.stream().map(one -> one.handovers().get(wall)).toList()));
        }
        return lines;
    }

    private static Line handover(FolderShown shown, List<Handover> all) {
        Handover base = all.getFirst();
        ZoneId zone = shown.site(base.facade().site()).zone();
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell(value(base, zone), "", Trend.LEVEL));
        all.stream().skip(1).forEach(one -> cells.add(cell(base, one, zone)));
        String due = base.due() == null ? "no day is due" : "due " + day(base.due());
        return new Line(shown.title(base.facade()), due, cells);
    }

    private static Cell cell(Handover base, Handover one, ZoneId zone) {
        String value = value(one, zone);
        if (base.cladBy() == null || one.cladBy() == null) return fewer(base, one, value);
        long days = ChronoUnit.DAYS.between(date(base, zone), date(one, zone));
        if (days == 0)
            return new Cell(value, one.cladBy().equals(base.cladBy()) ? "as before" : "same day", Trend.LEVEL);
        String count = Math.abs(days) == 1 ? "1 day" : Words.number(Math.abs(days)) + " days";
        return new Cell(value, "%s %s".formatted(count, days > 0 ? "later" : "earlier"), trend(days));
    }

    /** Where one of both has no day of hand-over. */
    private static Cell fewer(Handover base, Handover one, String value) {
        long more = one.notPlanned() - (long) base.notPlanned();
        if (one.cladBy() != null) return new Cell(value, "handed over now", Trend.BETTER);
        if (base.cladBy() != null) return new Cell(value, "not handed over now", Trend.WORSE);
        return new Cell(value, Words.difference(more), trend(more));
    }

    private static String value(Handover one, ZoneId zone) {
        if (one.notPlanned() > 0) return "%d not planned".formatted(one.notPlanned());
        if (one.cladBy() == null) return "nothing to do";
        boolean late = one.due() != null && date(one, zone).isAfter(one.due());
        return Words.moment(one.cladBy(), zone) + (late ? ", late" : "");
    }

    private static LocalDate date(Handover one, ZoneId zone) {
        return Objects.requireNonNull(one.cladBy()).atZone(zone).toLocalDate();
    }

    private static String day(LocalDate date) {
        return "%s %s".formatted(Words.weekday(date), Words.date(date));
    }
}
