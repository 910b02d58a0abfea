package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import drylap.kernel.Task;
import drylap.ui.drawn.Week.Block;
import drylap.ui.drawn.Week.CrewDay;
import drylap.ui.drawn.Week.Sky;
import drylap.ui.drawn.Week.Stretch;
import org.junit.jupiter.api.Test;

class WeekPresenterTests {
    @Test
    void shows_the_hours_from_the_earliest_start_to_the_latest_limit() {
        Week week = WeekPresenter.week(QuayPlan.unplannedFolder());
        assertThat(week.fromHour()).isEqualTo(7);
        assertThat(week.untilHour()).isEqualTo(17);
        assertThat(week.days()).extracting(Week.Day::label).containsExactly("13 Apr", "14 Apr");
    }

    @Test
    void puts_visits_that_follow_each_other_along_a_course_into_one_block() {
        CrewDay day = monday(new QuayPlan()
                .visit("W1", MONDAY, "08:00", "09:00", Task.INSTALL, "QW1-01")
                .visit("W1", MONDAY, "09:05", "10:00", Task.INSTALL, "QW1-02"));
        assertThat(day.blocks()).hasSize(1);
        Block block = day.blocks().getFirst();
        assertThat(block.from()).isEqualTo(480);
        assertThat(block.until()).isEqualTo(600);
        assertThat(block.ticks()).containsExactly(545);
        assertThat(block.items()).extracting(Week.Item::opening).containsExactly("QW1-01", "QW1-02");
    }

    @Test
    void tells_where_each_visit_of_a_block_lies() {
        CrewDay day = monday(new QuayPlan()
                .visit("W1", MONDAY, "08:00", "09:00", Task.INSTALL, "QW1-01")
                .visit("W1", MONDAY, "09:05", "10:00", Task.INSTALL, "QW1-02"));
        assertThat(day.blocks().getFirst().items())
                .extracting(Week.Item::start, Week.Item::end)
                .containsExactly(tuple(480, 540), tuple(545, 600));
        assertThat(day.hidden()).isZero();
    }

    @Test
    void shows_a_long_wait_within_a_course_as_a_gap() {
        CrewDay day = monday(new QuayPlan()
                .visit("W1", MONDAY, "08:00", "09:00", Task.INSTALL, "QW1-01")
                .visit("W1", MONDAY, "09:46", "10:00", Task.INSTALL, "QW1-02"));
        assertThat(day.blocks()).hasSize(2);
    }

    @Test
    void begins_a_new_block_at_another_level() {
        CrewDay day = monday(new QuayPlan()
                .visit("W1", MONDAY, "08:00", "09:00", Task.INSTALL, "QW1-01")
                .visit("W1", MONDAY, "09:00", "10:00", Task.INSTALL, "QW2-01"));
        assertThat(day.blocks()).extracting(Block::level).containsExactly(1, 2);
    }

    @Test
    void draws_the_sky_of_the_site_where_the_crew_works() {
        CrewDay day = monday(new QuayPlan().visit("W1", MONDAY, "08:00", "09:00", Task.INSTALL, "QW1-01"));
        assertThat(day.sky()).contains(new Sky("rain", 720, 840));
    }

    @Test
    void changes_the_sky_half_way_between_two_sites() {
        CrewDay day = monday(new QuayPlan()
                .visit("W1", MONDAY, "08:00", "12:40", Task.INSTALL, "QW1-01")
                .visit("W1", MONDAY, "13:20", "14:30", Task.INSTALL, "MS1-01"));
        assertThat(day.sky()).contains(new Sky("rain", 720, 780), new Sky("beyond", 780, 1440));
    }

    @Test
    void marks_a_visit_that_ends_beyond_the_forecast() {
        Week week = WeekPresenter.week(new QuayPlan()
                .visit("W1", TUESDAY, "10:00", "12:00", Task.INSTALL, "QW1-01")
                .visit("W1", TUESDAY, "12:01", "12:50", Task.INSTALL, "QW2-01")
                .shown());
        assertThat(week.crews().getFirst().days().get(1).blocks())
                .extracting(Block::beyond)
                .containsExactly(false, true);
    }

    @Test
    void tells_a_day_off_from_a_free_day() {
        Week week = WeekPresenter.week(QuayPlan.unplannedFolder());
        assertThat(week.crews().get(1).days().getFirst().shift()).isNull();
        assertThat(week.crews().get(1).days().get(1).shift()).isEqualTo(new Stretch(420, 930));
    }

    @Test
    void says_of_a_day_before_the_proposal_that_it_is_past() {
        assertThat(monday(new QuayPlan().from(MONDAY, "16:55")).idle()).isEqualTo("free");
        assertThat(monday(new QuayPlan().from(MONDAY, "17:00")).idle()).isEqualTo("past");
    }

    @Test
    void counts_overtime_into_the_shift() {
        CrewDay day = monday(new QuayPlan());
        assertThat(day.shift()).isEqualTo(new Stretch(420, 1020));
        assertThat(day.rest()).isEqualTo(new Stretch(690, 720));
    }

    private static CrewDay monday(QuayPlan plan) {
        return WeekPresenter.week(plan.shown()).crews().getFirst().days().getFirst();
    }
}
