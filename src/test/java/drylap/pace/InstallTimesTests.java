package drylap.pace;

import static drylap.pace.SimulatedLog.MONDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drylap.assembly.Method;
import drylap.kernel.CrewId;
import drylap.progress.MarkKind;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class InstallTimesTests {
    private final SimulatedLog log = new SimulatedLog().day("one", MONDAY);

    @ParameterizedTest
    @EnumSource(Method.class)
    void an_install_lasts_from_its_acceptance_to_the_last_line_of_its_block(Method method) {
        log.installed(method, 900, 83);
        log.installed(method, 2400, 120);

        var times = log.times();

        assertThat(times.leftOut()).isEmpty();
        assertThat(times.timed())
                .extracting(one -> one.cell().size())
                .containsExactly(SizeClass.SMALL, SizeClass.LARGE);
        assertThat(times.timed().getFirst().minutes()).isCloseTo(83, within(0.01));
        assertThat(times.timed().getLast().minutes()).isCloseTo(120, within(0.01));
    }

    @Test
    void the_break_of_the_shift_is_no_work() {
        log.work(270);
        log.installed(Method.B, 900, 80);

        assertThat(log.now)
                .isAfter(MONDAY.atTime(13, 0).atZone(SimulatedLog.ZONE).toInstant());
        assertThat(log.times().timed())
                .singleElement()
                .satisfies(one -> assertThat(one.minutes()).isCloseTo(80, within(0.01)));
    }

    @Test
    void work_at_two_openings_in_turn_is_counted_once() {
        var left = log.opening(Method.B, 900);
        var right = log.opening(Method.B, 900);
        log.tick(left, "RO");
        log.work(3);
        log.tick(right, "RO");
        for (String line : SimulatedLog.block(left)) {
            log.work(15);
            log.tick(left, line);
            log.work(17);
            log.tick(right, line);
        }

        var times = log.times().timed();
        assertThat(times.getFirst().minutes()).isCloseTo(5 * 15, within(0.01));
        assertThat(times.getLast().minutes()).isCloseTo(5 * 17, within(0.01));
    }

    @Test
    void a_line_forgotten_until_the_evening_does_not_stretch_its_install_over_the_day() {
        var first = log.opening(Method.B, 900);
        var lines = SimulatedLog.block(first);
        log.tick(first, "RO");
        for (String line : lines.subList(0, 4)) {
            log.work(20);
            log.tick(first, line);
        }
        for (int i = 0; i < 4; i++) log.installed(Method.B, 900, 80);
        log.tick(first, lines.getLast());

        assertThat(log.times().timed())
                .filteredOn(one -> one.opening().equals(first.id()))
                .singleElement()
                .satisfies(one -> assertThat(one.minutes()).isBetween(80.0, 90.0));
    }

    @Test
    void what_is_ticked_all_at_once_tells_no_time() {
        for (int i = 0; i < 3; i++) {
            var opening = log.opening(Method.B1, 900);
            log.tick(opening, "RO");
            SimulatedLog.block(opening).forEach(line -> {
                log.work(0.3);
                log.tick(opening, line);
            });
            log.work(3);
        }
        leftOut(Doubt.AT_ONCE, 3);
    }

    /** Ticked as it goes, but the last line of both only when going home: one cannot tell when either ended. */
    @Test
    void two_openings_that_end_in_one_moment_tell_no_time() {
        var one = log.opening(Method.B, 900);
        var other = log.opening(Method.B, 900);
        for (var opening : new drylap.sites.Opening[] {one, other}) {
            log.tick(opening, "RO");
            for (String line : SimulatedLog.block(opening).subList(0, 4)) {
                log.work(18);
                log.tick(opening, line);
            }
        }
        log.work(60);
        log.tick(one, SimulatedLog.block(one).getLast());
        log.tick(other, SimulatedLog.block(other).getLast());
        leftOut(Doubt.AT_ONCE, 2);
    }

    @Test
    void an_undone_line_a_night_a_long_stop_and_a_second_crew_tell_no_time() {
        var undone = log.installed(Method.B, 900, 70);
        log.add(undone, SimulatedLog.block(undone).getLast(), MarkKind.UNDONE, new CrewId("one"));
        log.tick(undone, SimulatedLog.block(undone).getLast());
        leftOut(Doubt.UNDONE, 1);

        var stopped = log.opening(Method.B, 900);
        log.tick(stopped, "RO");
        log.tick(stopped, "APR");
        log.work(130);
        SimulatedLog.block(stopped).stream().skip(1).forEach(line -> {
            log.tick(stopped, line);
            log.work(14);
        });
        leftOut(Doubt.PAUSE, 1);

        var shared = log.installed(Method.B, 900, 70);
        Objects.requireNonNull(log.log.get(shared.id())).removeLast();
        log.add(shared, SimulatedLog.block(shared).getLast(), MarkKind.DONE, new CrewId("two"));
        leftOut(Doubt.CREWS, 1);

        var overnight = log.installed(Method.B, 900, 70);
        Objects.requireNonNull(log.log.get(overnight.id())).removeLast();
        log.day("one", MONDAY.plusDays(1));
        log.tick(overnight, SimulatedLog.block(overnight).getLast());
        leftOut(Doubt.NIGHT, 1);
        assertThat(log.times().timed()).isEmpty();
    }

    @Test
    void an_install_that_nothing_says_the_beginning_of_or_that_is_absurd_tells_no_time() {
        var opening = log.opening(Method.B, 900);
        for (String line : SimulatedLog.block(opening)) {
            log.work(15);
            log.tick(opening, line);
        }
        leftOut(Doubt.START, 1);

        log.installed(Method.B, 900, 15);
        leftOut(Doubt.FAR_OFF, 1);
    }

    @Test
    void an_install_that_is_not_complete_is_not_counted_at_all() {
        var opening = log.opening(Method.B, 900);
        log.tick(opening, "RO");
        log.tick(opening, "APR");

        assertThat(log.times().timed()).isEmpty();
        assertThat(log.times().leftOut()).isEmpty();
    }

    private void leftOut(Doubt doubt, int times) {
        assertThat(log.times().leftOut()).containsEntry(doubt, times);
    }
}
