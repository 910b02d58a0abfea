package drylap.crews;

import drylap.kernel.CrewId;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An absence that someone asks for.
 *
 * @param from with {@code until} absent for the whole day
 */
public record AbsenceRequest(
        CrewId crew,
        LocalDate date,
        @Nullable LocalTime from,
        @Nullable LocalTime until,
        String reason) {
    private static final int LONGEST_REASON = 200;

    public static AbsenceRequest wholeDay(CrewId crew, LocalDate date, String reason) {
        return new AbsenceRequest(crew, date, null, null, reason);
    }

    /** What is wrong with it, and what would be right. */
    Optional<String> problem(List<Shift> shifts) {
        if (reason.isBlank() || reason.strip().length() > LONGEST_REASON)
            return Optional.of("say why, in 1 to %d characters".formatted(LONGEST_REASON));
        var shift = shifts.stream()
                .filter(one -> one.crew().equals(crew) && one.date().equals(date))
                .findFirst();
        if (shift.isEmpty())
            return Optional.of("crew %s has no shift on %s; choose a day on which it has one".formatted(crew, date));
        return problem(shift.get());
    }

    private Optional<String> problem(Shift shift) {
        if (from == null && until == null) return Optional.empty();
        if (from == null || until == null) return Optional.of("give both from and until, or neither for the whole day");
        if (!from.isBefore(until)) return Optional.of("from %s is not before until %s".formatted(from, until));
        var last = shift.overtimeUntil() == null ? shift.end() : shift.overtimeUntil();
        if (!from.isBefore(last) || !until.isAfter(shift.start()))
            return Optional.of("the shift of crew %s on %s is from %s to %s; choose a part of it"
                    .formatted(crew, date, shift.start(), last));
        return Optional.empty();
    }
}
