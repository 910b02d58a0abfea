package drylap.planning.solver;

import drylap.crews.Crew;
import drylap.crews.Shift;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** A crew's shifts in order, and its roads from and to its base; minutes throughout. */
final class CrewCalendar {
    final int index;
    final Crew crew;
    final LocalDate[] dates;
    final int[] from;
    final int[] end;
    final int[] limit;
    final int[] breakFrom;
    final int[] breakUntil;
    final int[] toSite;
    final int[] fromSite;
    /** Tasks that stay where they are on this crew, by start. */
    WorkTask[] pinned = new WorkTask[0];

    CrewCalendar(int index, Crew crew, List<Shift> shifts, TimeAxis axis, int[] toSite, int[] fromSite) {
        this.index = index;
        this.crew = crew;
        this.toSite = toSite;
        this.fromSite = fromSite;
        List<Shift> sorted =
                shifts.stream().sorted(Comparator.comparing(Shift::date)).toList();
        dates = sorted.stream().map(Shift::date).toArray(LocalDate[]::new);
        from = sorted.stream().mapToInt(shift -> axis.ceil(shift.startsAt())).toArray();
        end = sorted.stream().mapToInt(shift -> axis.floor(shift.endsAt())).toArray();
        limit = sorted.stream().mapToInt(shift -> axis.floor(shift.limit())).toArray();
        breakFrom = sorted.stream().mapToInt(shift -> breakStart(shift, axis)).toArray();
        breakUntil = sorted.stream().mapToInt(shift -> breakEnd(shift, axis)).toArray();
    }

    int days() {
        return from.length;
    }

    /** The day of a date; negative where the crew has no shift. */
    int dayOf(LocalDate date) {
        return Arrays.binarySearch(dates, date);
    }

    /** When work has to end that is going on at a minute of a day: at the break, or when the crew sets out for home. */
    int pauseAfter(int day, int minute, int site) {
        int home = end[day] - fromSite[site];
        return minute < breakFrom[day] ? Math.min(breakFrom[day], home) : home;
    }

    private static int breakStart(Shift shift, TimeAxis axis) {
        return shift.breakStart() == null ? TimeAxis.NEVER : axis.floor(shift.at(shift.breakStart()));
    }

    private static int breakEnd(Shift shift, TimeAxis axis) {
        return shift.breakEnd() == null ? -TimeAxis.NEVER : axis.ceil(shift.at(shift.breakEnd()));
    }
}
