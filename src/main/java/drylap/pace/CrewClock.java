package drylap.pace;

import drylap.crews.Shift;
import drylap.kernel.CrewId;
import drylap.progress.Mark;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What each crew ticked, one after the other: a tick ends a stretch of work that began at the crew's tick before it. */
final class CrewClock {
    /** Ticks closer than this are one moment of ticking, not work. */
    private static final Duration MOMENT = Duration.ofMinutes(2);

    private record CrewDay(CrewId crew, LocalDate date) {}

    private final Map<Long, Mark> before = new HashMap<>();
    private final Map<Long, Long> moment = new HashMap<>();
    private final Map<CrewDay, Shift> shifts;
    private final Map<CrewId, ZoneId> zones;

    CrewClock(Collection<Mark> marks, List<Shift> shifts, Map<CrewId, ZoneId> zones) {
        this.zones = zones;
        this.shifts = shifts.stream()
                .collect(Collectors.toMap(
                        shift -> new CrewDay(shift.crew(), shift.date()), shift -> shift, (a, _) -> a));
        Map<CrewId, List<Mark>> ofCrew = new HashMap<>();
        for (Mark mark : marks) {
            CrewId crew = mark.crew();
            if (crew != null)
                ofCrew.computeIfAbsent(crew, _ -> new ArrayList<>()).add(mark);
        }
        ofCrew.values().forEach(this::wind);
    }

    private void wind(List<Mark> own) {
        own.sort(Comparator.comparing(Mark::at).thenComparing(Mark::id));
        for (int i = 0; i < own.size(); i++) {
            Mark mark = own.get(i);
            Mark last = i == 0 ? null : own.get(i - 1);
            if (last != null) before.put(mark.id(), last);
            boolean same =
                    last != null && Duration.between(last.at(), mark.at()).compareTo(MOMENT) < 0;
            moment.put(mark.id(), same && last != null ? momentOf(last) : mark.id());
        }
    }

    /** The crew's tick before this one. */
    Optional<Mark> before(Mark mark) {
        return Optional.ofNullable(before.get(mark.id()));
    }

    /** Marks of one moment have the same number. */
    long momentOf(Mark mark) {
        return moment.getOrDefault(mark.id(), mark.id());
    }

    LocalDate date(Mark mark) {
        CrewId crew = mark.crew();
        ZoneId zone = crew == null ? ZoneOffset.UTC : zones.getOrDefault(crew, ZoneOffset.UTC);
        return mark.at().atZone(zone).toLocalDate();
    }

    /** From one tick to another of the same day, the break of the shift taken out. */
    double minutes(Mark from, Mark until) {
        double whole = minutes(from.at(), until.at());
        CrewId crew = until.crew();
        Shift shift = crew == null ? null : shifts.get(new CrewDay(crew, date(until)));
        LocalTime breakStart = shift == null ? null : shift.breakStart();
        LocalTime breakEnd = shift == null ? null : shift.breakEnd();
        if (shift == null || breakStart == null || breakEnd == null) return whole;
        Instant start = later(from.at(), shift.at(breakStart));
        Instant back = shift.at(breakEnd);
        Instant end = until.at().isBefore(back) ? until.at() : back;
        return whole - Math.max(0, minutes(start, end));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static double minutes(Instant from, Instant until) {
        return Duration.between(from, until).toMillis() / 60_000.0;
    }
}
