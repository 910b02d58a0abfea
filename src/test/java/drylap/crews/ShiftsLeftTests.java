package drylap.crews;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.CrewId;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shift from 7:00 to 15:30 with a break from 12:00 to 12:30 and overtime until 17:00. */
class ShiftsLeftTests {
    private static final CrewId CREW = new CrewId("W1");
    private static final LocalDate DAY = LocalDate.of(2026, 4, 13);

    private static Shift shift(CrewId crew, LocalDate date) {
        return new Shift(
                crew,
                date,
                time("07:00"),
                time("15:30"),
                time("12:00"),
                time("12:30"),
                time("17:00"),
                ZoneId.of("UTC"));
    }

    private static Absence away(@Nullable String from, @Nullable String until) {
        return new Absence(
                1,
                CREW,
                DAY,
                from == null ? null : time(from),
                until == null ? null : time(until),
                "ill",
                "Test",
                Instant.EPOCH);
    }

    private static LocalTime time(String time) {
        return LocalTime.parse(time);
    }

    @Test
    void a_day_of_absence_removes_the_shift_and_no_other() {
        var other = shift(new CrewId("W2"), DAY);
        var next = shift(CREW, DAY.plusDays(1));

        assertThat(ShiftsLeft.of(List.of(shift(CREW, DAY), other, next), List.of(away(null, null))))
                .containsExactly(other, next);
    }

    @Test
    void without_absences_the_shifts_are_as_they_were() {
        var shifts = List.of(shift(CREW, DAY));

        assertThat(ShiftsLeft.of(shifts, List.of())).isSameAs(shifts);
    }

    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
            # away,              left,  until, break from, until, overtime until
            07:00-09:00,        09:00, 15:30, 12:00, 12:30, 17:00
            05:00-09:00,        09:00, 15:30, 12:00, 12:30, 17:00
            13:00-15:30,        07:00, 13:00, 12:00, 12:30, -
            13:00-18:00,        07:00, 13:00, 12:00, 12:30, -
            16:00-18:00,        07:00, 15:30, 12:00, 12:30, 16:00
            15:30-17:00,        07:00, 15:30, 12:00, 12:30, 15:30
            09:00-10:00,        10:00, 15:30, 12:00, 12:30, 17:00
            11:00-12:00,        07:00, 11:00, -,     -,     -
            10:30-10:45,        10:45, 15:30, 12:00, 12:30, 17:00
            12:15-15:30,        07:00, 12:15, 12:00, 12:15, -
            09:00-10:00 12:30-13:00, 13:00, 15:30, -, -, 17:00
            """)
    void of_a_part_of_a_day_the_longer_working_part_stays(
            String away,
            String start,
            String end,
            @Nullable String breakStart,
            @Nullable String breakEnd,
            @Nullable String overtime) {
        var absences = Arrays.stream(away.split(" "))
                .map(part -> away(part.split("-")[0], part.split("-")[1]))
                .toList();

        var left = ShiftsLeft.of(List.of(shift(CREW, DAY)), absences);

        assertThat(left).singleElement().satisfies(one -> {
            assertThat(one.start()).isEqualTo(start);
            assertThat(one.end()).isEqualTo(end);
            assertThat(one.breakStart()).isEqualTo(breakStart == null ? null : time(breakStart));
            assertThat(one.breakEnd()).isEqualTo(breakEnd == null ? null : time(breakEnd));
            assertThat(one.overtimeUntil()).isEqualTo(overtime == null ? null : time(overtime));
        });
    }

    @Test
    void absences_that_cover_the_shift_together_remove_it() {
        assertThat(ShiftsLeft.of(List.of(shift(CREW, DAY)), List.of(away("06:00", "11:00"), away("10:00", "15:30"))))
                .isEmpty();
    }
}
