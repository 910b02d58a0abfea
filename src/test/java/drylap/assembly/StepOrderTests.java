package drylap.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class StepOrderTests {
    static List<Variant> variants() {
        return Variant.all();
    }

    private static Variant drained(Method method) {
        return new Variant(method, Approach.DRAINAGE, SecondLayer.NONE);
    }

    /** Rounds with a pan and one barrier layer, worked out by hand from the method definitions (AAMA 2400-10, ASTM E2112). */
    @ParameterizedTest
    @CsvSource({
        "A,  APR < PAN < SET < JF < HF W1S < APR.secure JF.secure W1J < W1H < CLD",
        "A1, W1S < APR W1J < PAN W1H < W1H.open < SET < JF < HF < W1H.close < CLD",
        "B,  APR < PAN < JF < SET W1S < HF W1J APR.secure JF.secure < W1H < CLD",
        "B1, W1S < APR W1J < PAN W1H < JF W1H.open < SET < HF < W1H.close < CLD"
    })
    void laps_alone_give_these_rounds(Method method, String rounds) {
        var expected = Arrays.stream(rounds.split(" < "))
                .map(round -> Set.of(round.split(" ")))
                .toList();
        assertThat(StepOrder.ofLaps(drained(method)).rounds().stream()
                        .map(round -> round.stream().map(Step::code).collect(Collectors.toSet()))
                        .toList())
                .isEqualTo(expected);
    }

    /**
     * The numbered lists of the trade without beads and checks: A by AAMA 2400-10 5.7.3, the others from trade articles and
     * the draft text of ASTM E2112. The air seal is this project's addition and stands where it disturbs no lap.
     */
    @ParameterizedTest
    @CsvSource({
        "A,  RO APR PAN SET JF HF RELEASE W1S W1J W1H CLD",
        "A1, W1S W1J W1H RO W1H.open APR PAN SET JF HF W1H.close RELEASE CLD",
        "B,  RO APR PAN JF SET HF RELEASE W1S W1J W1H CLD",
        "B1, W1S W1J W1H RO W1H.open APR PAN JF SET HF W1H.close RELEASE CLD"
    })
    void the_customary_sequence_follows_the_list_that_crews_tick(Method method, String list) {
        var listed = List.of(list.split(" "));
        assertThat(StepOrder.of(drained(method)).sequence().stream().map(Step::code))
                .containsSubsequence(listed);
    }

    @ParameterizedTest
    @MethodSource("variants")
    void the_customary_sequence_holds_every_step_once_and_obeys_the_laps(Variant variant) {
        var order = StepOrder.withWaterTest(variant);
        assertThat(order.sequence()).containsExactlyInAnyOrderElementsOf(order.steps());
        assertThat(order.allows(order.sequence())).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"A", "B"})
    void wrap_starts_only_on_a_released_opening_where_the_barrier_comes_last(Method method) {
        var order = StepOrder.of(drained(method));
        assertThat(order.before(Step.BARRIER_SILL)).contains(Step.RELEASE);
        assertThat(order.before(Step.RELEASE)).contains(Step.HEAD_FLASHING);
    }

    @ParameterizedTest
    @CsvSource({"A,W1S", "A1,CLD", "B,W1S", "B1,CLD"})
    void the_water_test_comes_after_the_air_seal_and_before_the_first_cover(Method method, String cover) {
        var sequence = StepOrder.withWaterTest(drained(method)).sequence().stream()
                .map(Step::code)
                .toList();
        assertThat(sequence).containsSubsequence("IAS", "TEST", cover);
    }

    @Test
    void after_the_apron_of_a_drained_opening_the_pan_is_next() {
        assertThat(StepOrder.of(drained(Method.A)).next(List.of(Step.ACCEPT, Step.APRON)))
                .containsExactly(Step.PAN);
    }

    @Test
    void a_window_without_its_pan_waits_for_the_pan() {
        assertThat(StepOrder.of(drained(Method.A)).missing(Step.SET, List.of(Step.ACCEPT, Step.APRON)))
                .containsExactly(Step.PAN);
    }

    @ParameterizedTest
    @CsvSource({"A,APR HF", "A1,W1H.open W1H.close", "B,APR HF", "B1,W1H.open W1H.close"})
    void the_block_that_is_never_interrupted_runs_from_first_cut_or_strip_to_last_lap(Method method, String ends) {
        for (var variant : Variant.all()) {
            if (variant.method() != method) continue;
            var block = InstallBlock.of(variant).steps();
            assertThat(block.getFirst().code() + " " + block.getLast().code()).isEqualTo(ends);
            assertThat(block.getLast()).isEqualTo(variant.lastLapOfInstall());
        }
    }
}
