package drylap.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LapGraphTests {
    record Reversal(Variant variant, Lap lap) {
        RecordedLap recorded() {
            return new RecordedLap(lap.under(), lap.over());
        }

        List<RecordedLap> wall() {
            var wall = new ArrayList<>(rightly(variant));
            wall.remove(new RecordedLap(lap.over(), lap.under()));
            wall.add(recorded());
            return wall;
        }
    }

    static List<RecordedLap> rightly(Variant variant) {
        return LapGraph.of(variant).laps().stream()
                .map(lap -> new RecordedLap(lap.over(), lap.under()))
                .toList();
    }

    static Stream<Reversal> verticalReversals() {
        return Variant.all().stream()
                .flatMap(variant -> LapGraph.of(variant).laps().stream()
                        .filter(Lap::vertical)
                        .map(lap -> new Reversal(variant, lap)));
    }

    static List<Variant> variants() {
        return Variant.all();
    }

    @Test
    void there_are_24_variants() {
        assertThat(Variant.all()).hasSize(24).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("variants")
    void no_variant_closes_a_ring_or_names_a_junction_twice(Variant variant) {
        assertThat(LapGraph.closesRing(rightly(variant))).isFalse();
        var laps = LapGraph.of(variant).laps();
        assertThat(laps)
                .allSatisfy(lap -> assertThat(laps.stream().filter(other -> other.joins(lap.over(), lap.under())))
                        .hasSize(1));
    }

    /** 320 and 204 were counted beforehand by a separate program from the same lap tables. */
    @Test
    void a_search_for_rings_alone_misses_204_of_320_reversed_vertical_laps() {
        assertThat(verticalReversals()).hasSize(320);
        assertThat(verticalReversals().filter(trial -> !LapGraph.closesRing(trial.wall())))
                .hasSize(204);
    }

    @Test
    void every_reversed_vertical_lap_is_named() {
        assertThat(verticalReversals()).allSatisfy(trial -> {
            var found = LapGraph.of(trial.variant()).reversed(trial.wall());
            assertThat(found).containsExactly(new LapVerdict.Reversed(trial.lap()));
            assertThat(found.getFirst().words())
                    .contains(trial.lap().under().words() + " lies over "
                            + trial.lap().over().words());
        });
    }

    @Test
    void layers_that_never_meet_are_not_called_right_or_wrong() {
        var recorded = new RecordedLap(Layer.HF, Layer.W1S);
        assertThat(LapGraph.of(new Variant(Method.A, Approach.DRAINAGE, SecondLayer.NONE))
                        .check(recorded))
                .isEqualTo(new LapVerdict.NoSuchJunction(recorded));
    }

    @Test
    void a_ring_of_three_is_found_behind_an_innocent_lap() {
        assertThat(LapGraph.closesRing(List.of(
                        new RecordedLap(Layer.CLD, Layer.HF),
                        new RecordedLap(Layer.HF, Layer.JF),
                        new RecordedLap(Layer.JF, Layer.APR),
                        new RecordedLap(Layer.APR, Layer.HF))))
                .isTrue();
    }
}
