package drylap.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.WaterPath.End;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WaterTraceTests {
    static List<Variant> variants() {
        return Variant.all();
    }

    private static Stream<WaterPath> failing(AsBuilt built) {
        return WaterTrace.of(built).stream().filter(path -> path.failsAt().isPresent());
    }

    @ParameterizedTest
    @MethodSource("variants")
    void water_on_a_finished_opening_drains_everywhere(Variant variant) {
        assertThat(WaterTrace.of(AsBuilt.finished(variant))).isNotEmpty().allSatisfy(path -> {
            assertThat(path.failsAt()).isEmpty();
            assertThat(path.heldByBond()).isFalse();
            assertThat(path.end()).isIn(End.DRAINS_OUTSIDE, End.DRAINS_BETWEEN_BARRIERS);
        });
    }

    /** Gravity decides: the layer that should lie under the upper one and lies over it catches the water on its back. */
    @Test
    void water_at_any_single_reversed_vertical_lap_is_led_behind_the_layer_that_lies_wrongly_outboard() {
        LapGraphTests.verticalReversals().forEach(trial -> {
            var built = AsBuilt.finished(trial.variant()).withReversed(List.of(trial.lap()));
            assertThat(failing(built))
                    .as("%s, %s reversed", trial.variant(), trial.lap().words())
                    .isNotEmpty()
                    .allSatisfy(path ->
                            assertThat(path.failsAt()).contains(trial.lap().under()));
        });
    }

    @Test
    void a_reversed_lap_of_the_second_layer_is_caught_by_the_first() {
        var variant = new Variant(Method.A1, Approach.DRAINAGE, SecondLayer.TUCK);
        var lap = LapGraph.of(variant).between(Layer.W2J, Layer.W2S).orElseThrow();
        assertThat(failing(AsBuilt.finished(variant).withReversed(List.of(lap))))
                .isNotEmpty()
                .allSatisfy(path -> assertThat(path.end()).isEqualTo(End.DRAINS_BETWEEN_BARRIERS));
    }

    /** A tucked barrier ends under the apron; one that was there first runs on behind it. */
    @Test
    void water_behind_the_apron_is_caught_only_where_the_barrier_was_on_the_wall_first() {
        for (var method : Method.values()) {
            var variant = new Variant(method, Approach.BARRIER, SecondLayer.NONE);
            var lap = LapGraph.of(variant).between(Layer.FLS, Layer.APR).orElseThrow();
            var expected = method.barrierFirst() ? End.DRAINS_OUTSIDE : End.ENTERS_WALL;
            assertThat(failing(AsBuilt.finished(variant).withReversed(List.of(lap))))
                    .isNotEmpty()
                    .allSatisfy(path -> assertThat(path.end()).isEqualTo(expected));
        }
    }

    @Test
    void a_barrier_laid_over_the_apron_instead_of_tucked_under_it_leads_water_into_the_wall() {
        var variant = new Variant(Method.A, Approach.DRAINAGE, SecondLayer.NONE);
        var lap = LapGraph.of(variant).between(Layer.APR, Layer.W1S).orElseThrow();
        assertThat(failing(AsBuilt.finished(variant).withReversed(List.of(lap))))
                .isNotEmpty()
                .allSatisfy(path -> assertThat(path.end()).isEqualTo(End.ENTERS_WALL))
                .anySatisfy(path -> assertThat(path.words()).contains("BEHIND the first barrier below the sill"));
    }

    /** Two rules that share nothing but the laps must agree on every state that a crew can leave behind. */
    @ParameterizedTest
    @MethodSource("variants")
    void the_water_agrees_with_the_rain_rating_after_every_step(Variant variant) {
        var done = new ArrayList<Step>();
        for (var step : StepOrder.of(variant).sequence()) {
            done.add(step);
            for (var conditions : List.of(Conditions.USUAL, Conditions.HEAD_EDGE_LOOSE)) {
                var built = AsBuilt.of(variant, done).under(conditions);
                assertThat(worst(built))
                        .as("%s after %s, %s", variant, step.code(), WaterTrace.of(built))
                        .isEqualTo(coarse(RainCheck.of(built).rating()));
            }
        }
    }

    private static String worst(AsBuilt built) {
        if (failing(built).findAny().isPresent()) return "fails";
        return WaterTrace.of(built).stream().anyMatch(WaterPath::heldByBond) ? "held" : "drains";
    }

    private static String coarse(RainRating rating) {
        return switch (rating) {
            case OPEN, COVER_ONLY -> "fails";
            case LIGHT_RAIN -> "held";
            case RAIN_SAFE -> "drains";
        };
    }

    @Test
    void water_at_a_raised_flap_fails_at_the_flap() {
        var variant = new Variant(Method.B1, Approach.DRAINAGE, SecondLayer.NONE);
        assertThat(failing(AsBuilt.after(variant, Step.HEAD_FLASHING)))
                .isNotEmpty()
                .allSatisfy(path -> assertThat(path.failsAt()).contains(Layer.W1H));
    }

    @Test
    void an_apron_before_its_barrier_drips_clear_of_the_opening() {
        var variant = new Variant(Method.A, Approach.DRAINAGE, SecondLayer.NONE);
        assertThat(WaterTrace.of(AsBuilt.after(variant, Step.HEAD_FLASHING)))
                .allSatisfy(path -> assertThat(path.end()).isEqualTo(End.DRIPS_ON_BARE_WALL));
    }
}
