package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.Task;
import drylap.planning.JobFixture;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DryStartTests {
    /** Deduced from the contract: the chance of rain over an install is that of the hours that it touches. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void no_minute_of_a_crews_day_is_drier_than_the_start_that_was_found(long seed) {
        Problem problem = Problem.of(JobFixture.job(30, seed), null);
        CrewCalendar crew = problem.crews(Task.INSTALL).getFirst();
        for (Unit unit : problem.units(Task.INSTALL))
            for (int day = 0; day < crew.days(); day++) {
                int found = DryStart.of(unit, crew, day);
                assertThat(DryStart.risk(unit.tasks[0], crew, day, found))
                        .as("%s on day %d", unit, day)
                        .isEqualTo(leastOfAllMinutes(unit.tasks[0], crew, day));
            }
    }

    /** What a search remembers of a day is what a look at the day says, from whichever minute on. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void what_is_remembered_is_what_was_found(long seed) {
        Problem problem = Problem.of(JobFixture.job(30, seed), null);
        DryHours remembered = problem.dryHours();
        for (CrewCalendar crew : problem.crews(Task.INSTALL))
            for (Unit unit : problem.units(Task.INSTALL))
                for (int day = 0; day < crew.days(); day++)
                    for (int from = Math.max(0, crew.from[day]); from <= crew.limit[day]; from += 7) {
                        DryMoment driest = remembered.from(from, unit.tasks[0], crew, day);
                        assertThat(driest).isEqualTo(found(from, unit.tasks[0], crew, day));
                        assertThat(driest.minute()).isBetween(from, crew.limit[day]);
                    }
    }

    private static DryMoment found(int from, WorkTask install, CrewCalendar crew, int day) {
        int minute = DryStart.from(from, install, crew, day);
        return new DryMoment(minute, DryStart.risk(install, crew, day, minute));
    }

    private static int leastOfAllMinutes(WorkTask install, CrewCalendar crew, int day) {
        return IntStream.rangeClosed(Math.max(0, crew.from[day]), crew.limit[day])
                .map(minute -> riskAt(install, crew, day, minute))
                .min()
                .orElse(DryStart.NO_PLACE);
    }

    /** Without any shift to where it is open: the minute itself is good or it is not. */
    private static int riskAt(WorkTask install, CrewCalendar crew, int day, int minute) {
        int end = minute + install.minutes;
        boolean fits = end <= crew.limit[day]
                && install.open.open(minute, end)
                && (end <= crew.breakFrom[day] || minute >= crew.breakUntil[day]);
        return fits ? install.odds.thousandths(minute, end) : DryStart.NO_PLACE;
    }
}
