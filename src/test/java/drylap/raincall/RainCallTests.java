package drylap.raincall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drylap.kernel.OpeningId;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Cases small enough to be worked out by hand. */
class RainCallTests {
    private static final int TWO_HOURS = 120;

    private static OpenToRain opening(String id, int closeMin, int coverMin, int rainFrom, double litresAMinute) {
        return new OpenToRain(
                new OpeningId(id), closeMin, rainFrom, coverMin, 0, Intake.steady(rainFrom, TWO_HOURS, litresAMinute));
    }

    @Test
    void with_time_for_all_every_opening_is_closed() {
        var order =
                RainCall.order(List.of(opening("W1", 20, 8, 60, 0.1), opening("W2", 30, 8, 60, 0.1)), Walks.none(2));

        assertThat(order.litres()).isZero();
        assertThat(order.stops()).extracting(RainCall.Stop::act).containsOnly(Act.CLOSE);
        assertThat(order.litresIfNothingIsDone()).isCloseTo(12, within(1e-9));
    }

    @Test
    void what_cannot_be_closed_in_time_is_covered() {
        var order =
                RainCall.order(List.of(opening("W1", 20, 8, 30, 0.1), opening("W2", 25, 8, 30, 0.1)), Walks.none(2));

        assertThat(order.litres()).isZero();
        assertThat(order.stops())
                .extracting(stop -> stop.opening() + " " + stop.act().words())
                .containsExactlyInAnyOrder("W1 close", "W2 cover");
    }

    /** 9 minutes late at 0.1 L/min: 0.9 L; the other way round 9 minutes at 1 L/min. */
    @Test
    void the_wetter_wall_goes_first() {
        var order = RainCall.order(
                List.of(opening("dry side", 90, 10, 11, 0.1), opening("wet side", 90, 10, 11, 1)), Walks.none(2));

        assertThat(order.stops()).extracting(stop -> stop.opening().value()).containsExactly("wet side", "dry side");
        assertThat(order.litres()).isCloseTo(0.9, within(1e-9));
    }

    @Test
    void a_long_walk_to_little_water_comes_last() {
        var walks = Walks.of(new int[] {0, 30, 0}, new int[][] {{0, 30, 0}, {30, 0, 30}, {0, 30, 0}});
        var order = RainCall.order(
                List.of(
                        opening("near", 90, 10, 0, 0.2),
                        opening("far", 90, 10, 0, 0.3),
                        opening("next to it", 90, 10, 0, 0.2)),
                walks);

        assertThat(order.stops().getLast().opening().value()).isEqualTo("far");
        assertThat(order.stops().getLast().from()).isEqualTo(50);
    }

    @Test
    void what_no_time_is_left_for_is_left() {
        var order = RainCall.order(List.of(opening("W1", 150, 121, 0, 0.1)), Walks.none(1));

        assertThat(order.stops()).isEmpty();
        assertThat(order.left()).containsExactly(new OpeningId("W1"));
        assertThat(order.litres()).isEqualTo(order.litresIfNothingIsDone());
    }

    @Test
    void a_cover_that_lets_water_in_counts_it() {
        var leaky = new OpenToRain(new OpeningId("W1"), 60, 0, 20, 100, Intake.steady(0, TWO_HOURS, 0.1));

        assertThat(RainCall.order(List.of(leaky), Walks.none(1)).litres()).isCloseTo(2 + 1, within(1e-9));
    }

    @Test
    void nothing_open_asks_for_nothing() {
        var order = RainCall.order(List.of(), Walks.none(0));

        assertThat(order.stops()).isEmpty();
        assertThat(order.exact()).isTrue();
    }

    @Test
    void more_than_twelve_are_said_to_be_searched_not_solved() {
        var openings = IntStream.range(0, 13)
                .mapToObj(i -> opening("W" + i, 30, 5 + i, 10, 0.1))
                .toList();

        assertThat(RainCall.order(openings, Walks.none(13)).exact()).isFalse();
        assertThat(RainCall.order(openings.subList(0, 12), Walks.none(12)).exact())
                .isTrue();
    }

    @Test
    void walks_of_other_openings_are_refused() {
        assertThatThrownBy(() -> RainCall.order(List.of(), Walks.none(2))).hasMessageContaining("walks for 2 openings");
        assertThatThrownBy(() -> Walks.of(new int[2], new int[1][2])).hasMessageContaining("as many rows");
    }
}
