package drylap.ui.drawn;

import drylap.risk.RiskReport.DayChance;
import drylap.risk.RiskReport.Handover;
import drylap.speech.Speech;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The chance by day that a facade is handed over.
 *
 * @param due the end of the due day, in days from the start of the first; negative where there is none, or none in reach
 */
public record HandoverChart(String title, List<Day> days, List<Mark> marks, double due, String dueWords) {
    /** What still comes after so large a share is a tail of single trials, which the table has. */
    private static final double WHOLE = 0.995;

    /** A chart that shows more says less. */
    private static final int MOST_DAYS = 28;

    private static final int[] OF_TEN = {5, 8, 9};

    /** @param chance handed over by its end */
    public record Day(String label, double chance, String sky) {}

    /** @param at in days from the start of the first, where the chance by day reaches so much */
    public record Mark(int ofTen, double at, String words) {}

    static HandoverChart of(Speech say, FolderShown shown, Handover one, Function<LocalDate, String> sky) {
        ZoneId zone = shown.site(one.facade().site()).zone();
        Map<LocalDate, Double> chances =
                one.spread().stream().collect(Collectors.toMap(DayChance::day, DayChance::chance));
        LocalDate first = first(one, zone);
        LocalDate last = last(one, first);
        List<Day> days = new ArrayList<>();
        double until = 0;
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            until = Math.min(1, until + chances.getOrDefault(day, 0.0));
            days.add(new Day(say.date(day), until, sky.apply(day)));
        }
        LocalDate due = one.due();
        return new HandoverChart(
                shown.title(one.facade()),
                days,
                marks(say, one, days, zone),
                due == null ? -1 : Math.clamp(ChronoUnit.DAYS.between(first, due) + 1, 0, days.size()),
                due == null ? "" : say.it("due {0}", say.day(due)));
    }

    private static LocalDate first(Handover one, ZoneId zone) {
        LocalDate planned = one.planned().atZone(zone).toLocalDate();
        if (one.spread().isEmpty()) return planned;
        LocalDate first = one.spread().getFirst().day();
        return (first.isBefore(planned) ? first : planned).minusDays(1);
    }

    private static LocalDate last(Handover one, LocalDate first) {
        LocalDate last = first;
        double until = 0;
        for (DayChance day : one.spread()) {
            if (until >= WHOLE) break;
            until += day.chance();
            last = day.day();
        }
        LocalDate due = one.due();
        if (due != null && due.isAfter(last)) last = due;
        LocalDate most = first.plusDays(MOST_DAYS);
        return last.isAfter(most) ? most : last;
    }

    /** On the line of the chart, which within a day tells nothing. */
    private static List<Mark> marks(Speech say, Handover one, List<Day> days, ZoneId zone) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < OF_TEN.length; i++) {
            double at = reached(days, OF_TEN[i] / 10.0);
            if (at >= 0)
                marks.add(new Mark(
                        OF_TEN[i],
                        at,
                        Words.lowered(OddsWords.by(
                                say, OF_TEN[i], OddsCharts.figures(one).get(i), zone))));
        }
        return marks;
    }

    private static double reached(List<Day> days, double share) {
        double before = 0;
        for (int i = 0; i < days.size(); i++) {
            double now = days.get(i).chance();
            if (now >= share) return i + (share - before) / (now - before);
            before = now;
        }
        return -1;
    }
}
