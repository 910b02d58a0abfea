package drylap.ui.drawn;

import static drylap.ui.drawn.QuayPlan.MONDAY;
import static drylap.ui.drawn.QuayPlan.TUESDAY;
import static drylap.ui.drawn.QuayPlan.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.handoff.Bookings.Booking;
import drylap.kernel.CrewId;
import drylap.kernel.SiteId;
import drylap.kernel.Task;
import drylap.speech.Speech;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class BookedBesidePlanTests {
    private static final FolderShown SHOWN = new QuayPlan()
            .visit("P1", TUESDAY, "08:00", "09:00", Task.WRAP, "MS1-01")
            .visit("P1", TUESDAY, "09:00", "10:00", Task.WRAP, "MS1-02")
            .shown();

    @Test
    void a_booked_day_stands_beside_what_the_plan_has_for_the_crew_there_on_that_day() {
        assertThat(plans(booking("M", TUESDAY), booking("Q", TUESDAY), booking("M", MONDAY)))
                .containsExactly("2 visits", "nothing for it there that day", "nothing for it there that day");
    }

    @Test
    void days_that_are_over_at_the_site_and_sites_out_of_sight_are_left_out() {
        var booked = BookedBesidePlan.of(
                Speech.ENGLISH,
                SHOWN,
                List.of(booking("M", MONDAY), booking("M", TUESDAY), booking("elsewhere", TUESDAY)),
                at(TUESDAY, "00:10"));

        assertThat(booked.rows()).extracting(BookedBesidePlan.Row::day).containsExactly("Tue 14 Apr");
    }

    private static List<String> plans(Booking... bookings) {
        return BookedBesidePlan.of(Speech.ENGLISH, SHOWN, List.of(bookings), at(MONDAY, "06:00")).rows().stream()
                .map(BookedBesidePlan.Row::plan)
                .toList();
    }

    private static Booking booking(String site, LocalDate day) {
        return new Booking(1, new SiteId(site), new CrewId("P1"), day, "", "Ada");
    }
}
