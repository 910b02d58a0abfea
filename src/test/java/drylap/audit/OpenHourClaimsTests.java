package drylap.audit;

import static drylap.audit.TwoSites.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.FacadeId;
import drylap.kernel.Task;
import drylap.kernel.TimeWindow;
import drylap.planning.OpenWindow;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.junit.jupiter.api.Test;

/** Claimed open hours, written by hand for the two sites with sunrise and sunset of the reference algorithm SPA. */
class OpenHourClaimsTests {
    private static List<Breach> judged(List<OpenWindow> windows) {
        Case legal = Case.legal();
        ClaimedPlan plan = new ClaimedPlan(legal.visits(), null, null, windows, null);
        return Audit.of(legal.folder(), plan, at("14 05:00")).breaches().stream()
                .filter(breach -> breach.rule() == ContractRule.OPEN_HOURS)
                .toList();
    }

    private static Instant rise(int day) {
        return sun(day).sunrise().toInstant().truncatedTo(ChronoUnit.MINUTES).plusSeconds(60);
    }

    private static Instant dusk(int day) {
        return sun(day).sunset().toInstant().minusSeconds(30 * 60).truncatedTo(ChronoUnit.MINUTES);
    }

    /** The UT day of 20:00 UTC holds Vancouver's sunrise; its sunset falls on the next. */
    private static SunriseResult.RegularDay sun(int day) {
        ZonedDateTime noon = ZonedDateTime.of(2026, 4, day, 12, 0, 0, 0, ZoneId.of("America/Vancouver"));
        return (SunriseResult.RegularDay) SPA.calculateSunriseTransitSet(noon, 49.28, -123.12, 69);
    }

    private static OpenWindow open(FacadeId facade, Task task, Instant from, Instant until) {
        return new OpenWindow(facade, task, new TimeWindow(from, until));
    }

    /** Tuesday and Wednesday; the plan's horizon ends on Wednesday at 17:00. */
    private static List<OpenWindow> right() {
        List<OpenWindow> windows = new ArrayList<>();
        // North: rain until 8, then it dries until 11; cold from 12 to 15. East: rain until 8, then the same cold.
        windows.add(open(TwoSites.QUAY_NORTH, Task.INSTALL, at("14 11:00"), at("14 12:00")));
        windows.add(open(TwoSites.QUAY_NORTH, Task.INSTALL, at("14 15:00"), dusk(14)));
        windows.add(open(TwoSites.QUAY_NORTH, Task.TEST, rise(14), dusk(14)));
        windows.add(open(TwoSites.QUAY_EAST, Task.INSTALL, at("14 08:00"), at("14 12:00")));
        windows.add(open(TwoSites.QUAY_EAST, Task.INSTALL, at("14 15:00"), dusk(14)));
        windows.add(open(TwoSites.MILL_WEST, Task.INSTALL, rise(14), dusk(14)));
        windows.add(open(TwoSites.MILL_WEST, Task.WRAP, rise(14), at("14 13:00")));
        windows.add(open(TwoSites.MILL_WEST, Task.WRAP, at("14 15:00"), dusk(14)));
        windows.add(open(TwoSites.MILL_WEST, Task.CLAD, rise(14), dusk(14)));
        for (FacadeId quay : List.of(TwoSites.QUAY_NORTH, TwoSites.QUAY_EAST))
            windows.add(open(quay, Task.CLAD, at("14 08:00"), dusk(14)));
        windows.add(open(TwoSites.QUAY_NORTH, Task.WRAP, at("14 08:00"), dusk(14)));
        for (OpenWindow window : List.copyOf(windows))
            if (windows.stream().noneMatch(other -> wednesday(other, window)))
                windows.add(open(window.facade(), window.task(), rise(15), at("15 17:00")));
        return windows;
    }

    private static boolean wednesday(OpenWindow window, OpenWindow like) {
        return window.when().from().isAfter(at("15 00:00"))
                && window.facade().equals(like.facade())
                && window.task() == like.task();
    }

    @Test
    void the_right_list_passes() {
        assertThat(judged(right())).isEmpty();
    }

    @Test
    void an_hour_listed_in_rain_is_named() {
        List<OpenWindow> windows = right();
        windows.set(0, open(TwoSites.QUAY_NORTH, Task.INSTALL, at("14 10:50"), at("14 12:00")));
        assertThat(judged(windows))
                .singleElement()
                .hasToString(
                        "[4] open hours, install of quay/N, Tue 14 Apr 2026 10:50: is listed as open, but shut: rain has "
                                + "wetted the wall and it still dries (rule: the open hours are those of the forecast)");
    }

    @Test
    void an_open_hour_left_out_is_named() {
        List<OpenWindow> windows = right();
        windows.removeFirst();
        assertThat(judged(windows))
                .extracting(breach -> breach.what().words())
                .containsExactly("is open, but not listed");
    }
}
