package drylap.crews;

import drylap.kernel.CrewId;
import drylap.speech.Saying;
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
    Optional<Saying> problem(List<Shift> shifts) {
        if (reason.isBlank() || reason.strip().length() > LONGEST_REASON)
            return Optional.of(Saying.of("say why, in 1 to {0} characters", LONGEST_REASON));
        var shift = shifts.stream()
                .filter(one -> one.crew().equals(crew) && one.date().equals(date))
                .findFirst();
        if (shift.isEmpty())
            return Optional.of(Saying.of("crew {0} has no shift on {1}; choose a day on which it has one", crew, date));
        return problem(shift.get());
    }

    private Optional<Saying> problem(Shift shift) {
        if (from == null && until == null) return Optional.empty();
        if (from == null || until == null)
            return Optional.of(Saying.of("give both from and until, or neither for the whole day"));
        if (!from.isBefore(until)) return Optional.of(Saying.of("from {0} is not before until {1}", from, until));
        var last = shift.overtimeUntil() == null ? shift.end() : shift.overtimeUntil();
        if (!from.isBefore(last) || !until.isAfter(shift.start()))
            return Optional.of(Saying.of(
                    "the shift of crew {0} on {1} is from {2} to {3}; choose a part of it",
                    crew, date, shift.start(), last));
        return Optional.empty();
    }
}
