package drylap.risk;

import drylap.climate.MinuteAxis;
import drylap.crews.Crew;
import drylap.crews.Shift;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A crew's days in order, in minutes; after its last shift it is taken to go on as in its last seven days. */
final class CrewDays {
    /** Work that is not through by then counts as never done. */
    static final int WEEKS_MORE = 6;

    private static final int WEEK = 7;

    final Crew crew;
    final LocalDate[] dates;
    final int[] from;
    final int[] limit;
    final int[] breakFrom;
    final int[] breakUntil;
    final int[] toSite;
    final int[] fromSite;

    CrewDays(Crew crew, List<Shift> planned, MinuteAxis axis, int[] toSite, int[] fromSite) {
        this.crew = crew;
        this.toSite = toSite;
        this.fromSite = fromSite;
        List<Shift> shifts = goingOn(
                planned.stream().sorted(Comparator.comparing(Shift::date)).toList());
        dates = shifts.stream().map(Shift::date).toArray(LocalDate[]::new);
        from = shifts.stream().mapToInt(shift -> axis.ceil(shift.startsAt())).toArray();
        limit = shifts.stream().mapToInt(shift -> axis.floor(shift.limit())).toArray();
        breakFrom = shifts.stream().mapToInt(shift -> breakStart(shift, axis)).toArray();
        breakUntil = shifts.stream().mapToInt(shift -> breakEnd(shift, axis)).toArray();
    }

    static List<Shift> goingOn(List<Shift> sorted) {
        List<Shift> all = new ArrayList<>(sorted);
        if (sorted.isEmpty()) return all;
        LocalDate last = sorted.getLast().date();
        List<Shift> week = sorted.stream()
                .filter(shift -> shift.date().isAfter(last.minusDays(WEEK)))
                .toList();
        for (int more = 1; more <= WEEKS_MORE; more++)
            for (Shift shift : week) all.add(shift.on(shift.date().plusWeeks(more)));
        return all;
    }

    private static int breakStart(Shift shift, MinuteAxis axis) {
        return shift.breakStart() == null ? MinuteAxis.NEVER : axis.floor(shift.at(shift.breakStart()));
    }

    private static int breakEnd(Shift shift, MinuteAxis axis) {
        return shift.breakEnd() == null ? -MinuteAxis.NEVER : axis.ceil(shift.at(shift.breakEnd()));
    }

    int days() {
        return dates.length;
    }

    /** The day in which a minute lies, or the next one. */
    int dayAt(int minute) {
        int day = 0;
        while (day < limit.length && limit[day] <= minute) day++;
        return day;
    }
}
