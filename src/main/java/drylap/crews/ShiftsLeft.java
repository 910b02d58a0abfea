package drylap.crews;

import drylap.kernel.CrewId;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What absences leave of shifts. A crew has one shift a date, so of a shift that is cut in two the part with more working time
 * stays (decision 093).
 */
public final class ShiftsLeft {
    private record Day(CrewId crew, LocalDate date) {}

    private record Part(LocalTime from, LocalTime until) {}

    private ShiftsLeft() {}

    public static List<Shift> of(List<Shift> shifts, List<Absence> absences) {
        if (absences.isEmpty()) return shifts;
        Map<Day, List<Absence>> byDay =
                absences.stream().collect(Collectors.groupingBy(one -> new Day(one.crew(), one.date())));
        return shifts.stream()
                .flatMap(shift ->
                        left(shift, byDay.getOrDefault(new Day(shift.crew(), shift.date()), List.of())).stream())
                .toList();
    }

    private static Optional<Shift> left(Shift shift, List<Absence> absences) {
        if (absences.isEmpty()) return Optional.of(shift);
        if (absences.stream().anyMatch(Absence::wholeDay)) return Optional.empty();
        return parts(shift, absences).stream()
                .map(part -> cut(shift, part, absences))
                .max(Comparator.comparing(ShiftsLeft::working).thenComparing(Shift::start, Comparator.reverseOrder()));
    }

    /** Of the ordinary hours; none of them is empty. */
    private static List<Part> parts(Shift shift, List<Absence> absences) {
        List<Part> parts = List.of(new Part(shift.start(), shift.end()));
        for (var absence : absences) {
            List<Part> left = new ArrayList<>();
            for (var part : parts) {
                add(left, part.from(), earlier(part.until(), from(absence)));
                add(left, later(part.from(), until(absence)), part.until());
            }
            parts = left;
        }
        return parts;
    }

    private static void add(List<Part> parts, LocalTime from, LocalTime until) {
        if (from.isBefore(until)) parts.add(new Part(from, until));
    }

    private static Shift cut(Shift shift, Part part, List<Absence> absences) {
        @Nullable LocalTime breakFrom = shift.breakStart() == null ? null : later(shift.breakStart(), part.from());
        @Nullable LocalTime breakUntil = shift.breakEnd() == null ? null : earlier(shift.breakEnd(), part.until());
        boolean hasBreak = breakFrom != null && breakUntil != null && breakFrom.isBefore(breakUntil);
        return new Shift(
                shift.crew(),
                shift.date(),
                part.from(),
                part.until(),
                hasBreak ? breakFrom : null,
                hasBreak ? breakUntil : null,
                overtime(shift, part, absences),
                shift.zone());
    }

    /** Only after the ordinary end, and up to where the crew is away. */
    private static @Nullable LocalTime overtime(Shift shift, Part part, List<Absence> absences) {
        LocalTime until = shift.overtimeUntil();
        if (until == null || !part.until().equals(shift.end())) return null;
        for (var absence : absences)
            if (until(absence).isAfter(shift.end())) until = earlier(until, later(from(absence), shift.end()));
        return until;
    }

    private static Duration working(Shift shift) {
        var whole = Duration.between(shift.start(), shift.end());
        return shift.breakStart() == null || shift.breakEnd() == null
                ? whole
                : whole.minus(Duration.between(shift.breakStart(), shift.breakEnd()));
    }

    private static LocalTime from(Absence absence) {
        return absence.from() == null ? LocalTime.MIN : absence.from();
    }

    private static LocalTime until(Absence absence) {
        return absence.until() == null ? LocalTime.MAX : absence.until();
    }

    private static LocalTime earlier(LocalTime one, LocalTime other) {
        return one.isBefore(other) ? one : other;
    }

    private static LocalTime later(LocalTime one, LocalTime other) {
        return one.isAfter(other) ? one : other;
    }
}
