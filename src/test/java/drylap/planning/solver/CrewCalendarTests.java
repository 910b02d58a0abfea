package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A shift from 8:00 to 14:30 with a break from 11:30 to 12:00, the base on the site. */
class CrewCalendarTests {
    private final Problem problem = Problem.of(TinyJob.of(3, 1), null);
    private final CrewCalendar crew = problem.crews().getFirst();
    private final int eight = crew.from[0];

    @Test
    void work_that_begins_before_the_break_ends_with_it() {
        assertThat(crew.pauseAfter(0, eight, 0)).isEqualTo(eight + 210);
        assertThat(crew.pauseAfter(0, eight + 209, 0)).isEqualTo(eight + 210);
    }

    @Test
    void work_after_the_break_ends_when_the_crew_sets_out_for_home() {
        assertThat(crew.pauseAfter(0, eight + 240, 0)).isEqualTo(eight + 390);
        crew.fromSite[0] = 25;
        assertThat(crew.pauseAfter(0, eight + 240, 0)).isEqualTo(eight + 365);
    }

    @Test
    void the_way_home_may_begin_before_the_break() {
        crew.fromSite[0] = 200;
        assertThat(crew.pauseAfter(0, eight, 0)).isEqualTo(eight + 190);
    }
}
