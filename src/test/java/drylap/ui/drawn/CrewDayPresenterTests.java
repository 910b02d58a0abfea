package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.CrewId;
import drylap.kernel.Task;
import drylap.speech.Speech;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The quay folder's crew W1: rain at Quay Nine on Monday from noon to two, none known at Mill Row. */
class CrewDayPresenterTests {
    private static final CrewId W1 = new CrewId("W1");
    private static final Instant MORNING = Instant.parse("2026-04-13T13:00:00Z");

    private static CrewDay day(QuayPlan plan, LocalDate date) {
        return CrewDayPresenter.day(Speech.ENGLISH, plan.shown(), W1, date, MORNING);
    }

    @Test
    void stops_come_in_their_order_with_the_time_of_the_site_and_the_way_between() {
        var day = day(
                new QuayPlan()
                        .visit("W1", MONDAY, "10:00", "11:00", Task.INSTALL, "MS1-01")
                        .visit("W1", MONDAY, "07:15", "08:45", Task.INSTALL, "QW2-01")
                        .visit("W1", TUESDAY, "07:15", "08:45", Task.INSTALL, "MS1-02"),
                MONDAY);

        assertThat(day.stops()).extracting(CrewDay.Stop::opening).containsExactly("QW2-01", "MS1-01");
        assertThat(day.stops()).extracting(CrewDay.Stop::from).containsExactly("07:15", "10:00");
        assertThat(day.stops()).extracting(CrewDay.Stop::way).containsExactly("", "75 min to go to Mill Row");
        assertThat(day.stops()).allMatch(CrewDay.Stop::ready);
    }

    @Test
    void rain_before_the_end_of_a_stop_keeps_it_from_being_ready() {
        var day = day(new QuayPlan().visit("W1", MONDAY, "11:00", "12:30", Task.INSTALL, "QW2-01"), MONDAY);

        assertThat(day.stops().getFirst().whyNot()).containsExactly("rain forecast from 12:00");
    }

    @Test
    void a_window_that_is_not_on_site_keeps_its_opening_from_being_ready() {
        var early = LocalDate.of(2026, 4, 9);
        var day = day(new QuayPlan().visit("W1", early, "08:00", "09:00", Task.INSTALL, "MS1-01"), early);

        assertThat(day.stops().getFirst().whyNot()).contains("window not on site before Fri 10 Apr");
    }

    @Test
    void what_another_trade_must_do_first_is_named_and_what_is_done_is_no_longer_ready() {
        var day = CrewDayPresenter.day(
                Speech.ENGLISH,
                new QuayPlan()
                        .visit("P1", TUESDAY, "08:00", "08:30", Task.WRAP, "QW2-01")
                        .visit("P1", TUESDAY, "09:00", "09:30", Task.INSTALL, "QW1-02")
                        .shown(),
                new CrewId("P1"),
                TUESDAY,
                MORNING);

        assertThat(day.stops().getFirst().whyNot()).containsExactly("waits for another trade: Install first");
        assertThat(day.stops().getLast().standing()).isEqualTo("done");
    }

    @Test
    void a_day_without_a_stop_says_why() {
        assertThat(day(new QuayPlan(), MONDAY).nothing()).contains("nowhere on this day", "nor on any day after it");
    }

    @Test
    void a_day_without_a_stop_names_the_next_one_that_has_some() {
        var plan = new QuayPlan().visit("W1", TUESDAY, "08:00", "09:00", Task.INSTALL, "MS1-01");

        assertThat(day(plan, MONDAY).nothing()).endsWith("; next on Tue 14 Apr, Mill Row, south.");
    }
}
