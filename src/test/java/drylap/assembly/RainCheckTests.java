package drylap.assembly;

import static drylap.assembly.Conditions.HEAD_EDGE_LOOSE;
import static drylap.assembly.Conditions.USUAL;
import static drylap.assembly.Conditions.WINDY;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The ratings of the trade's intermediate states were judged by hand, state by state, before the rule was written. */
class RainCheckTests {
    private static String rating(AsBuilt built) {
        return RainCheck.of(built).rating().code();
    }

    private static AsBuilt after(String method, Step step) {
        return AsBuilt.after(new Variant(Method.valueOf(method), Approach.DRAINAGE, SecondLayer.NONE), step);
    }

    /** {@code -} stands where the method has no such state. */
    @ParameterizedTest(name = "{0}: A {2}, A1 {3}, B {4}, B1 {5}")
    @CsvSource({
        "opening accepted or barrier intact, RO,        R0, R3, R0, R3",
        "barrier cut and flap up,            W1H.open,  -,  R0, -,  R0",
        "apron,                              APR,       R0, R0, R0, R0",
        "pan,                                PAN,       R0, R0, R0, R0",
        "jamb flashing before the window,    JF,        -,  -,  R0, R0",
        "window set,                         SET,       R0, R0, R1, R1",
        "jamb flashing after the window,     JF,        R1, R1, -,  -",
        "self-adhered head flashing,         HF,        R2, R1, R2, R1",
        "flap down and diagonals taped,      W1H.close, -,  R3, -,  R3",
        "first barrier complete,             W1H,       R3, R3, R3, R3",
        "cladding complete,                  CLD,       R3, R3, R3, R3"
    })
    void each_state_has_the_rating_that_the_trade_gives_it(
            String state, String code, String a, String a1, String b, String b1) {
        var step = Stream.of(Step.values())
                .filter(s -> s.code().equals(code))
                .findFirst()
                .orElseThrow();
        var expected = List.of(a, a1, b, b1);
        for (int i = 0; i < 4; i++)
            if (!expected.get(i).equals("-"))
                assertThat(rating(after(Method.values()[i].name(), step)))
                        .as(state + " of " + Method.values()[i])
                        .isEqualTo(expected.get(i));
    }

    @ParameterizedTest
    @CsvSource({"A", "A1", "B", "B1"})
    void a_head_flashing_whose_top_edge_is_not_sealed_needs_a_cover(String method) {
        assertThat(rating(after(method, Step.HEAD_FLASHING).under(HEAD_EDGE_LOOSE)))
                .isEqualTo("R1");
    }

    @Test
    void sealant_that_has_not_skinned_needs_a_cover() {
        var fresh = new Conditions(true, false, false);
        assertThat(rating(after("A", Step.HEAD_FLASHING).under(fresh))).isEqualTo("R1");
    }

    @ParameterizedTest
    @CsvSource({"A,W1H", "A1,W1H.close", "B,W1H", "B1,W1H.close"})
    void a_free_apron_that_waits_for_the_second_layer_is_safe_in_calm_air_only(String method, String last) {
        var variant = new Variant(Method.valueOf(method), Approach.DRAINAGE, SecondLayer.TUCK);
        var step = Stream.of(Step.values())
                .filter(s -> s.code().equals(last))
                .findFirst()
                .orElseThrow();
        var waiting = AsBuilt.after(variant, step);
        assertThat(waiting.apron()).isEqualTo(new Apron.LowerEdgeFree(Apron.Plane.SECOND_BARRIER));
        assertThat(rating(waiting.under(USUAL))).isEqualTo("R3");
        assertThat(rating(waiting.under(WINDY))).isEqualTo("R2");
    }

    static List<Variant> variants() {
        return Variant.all();
    }

    @ParameterizedTest
    @MethodSource("variants")
    void a_finished_opening_is_rain_safe_even_in_wind(Variant variant) {
        assertThat(rating(AsBuilt.finished(variant).under(WINDY))).isEqualTo("R3");
    }

    @Test
    void any_reversed_lap_leaves_the_finished_opening_open() {
        for (var variant : Variant.all())
            for (var lap : LapGraph.of(variant).laps())
                assertThat(rating(AsBuilt.finished(variant).withReversed(List.of(lap))))
                        .as("%s with %s reversed", variant, lap.words())
                        .isEqualTo("R0");
    }

    @Test
    void the_second_barrier_below_an_apron_that_drains_between_needs_its_closure() {
        var variant = new Variant(Method.B1, Approach.DRAINAGE, SecondLayer.DRAIN_BETWEEN);
        assertThat(rating(AsBuilt.after(variant, Step.SECOND_SILL))).isEqualTo("R1");
        assertThat(rating(AsBuilt.after(variant, Step.CLOSURE))).isEqualTo("R3");
    }

    @ParameterizedTest
    @CsvSource({"A,8,R2", "A,7,R1", "A1,0,R3", "A1,8,R1", "A1,9,R3", "B,5,R1", "B,6,R2", "B1,3,R0", "B1,7,R3"})
    void the_numbered_list_leads_to_the_same_states(Method method, int line, String expected) {
        var variant = new Variant(method, Approach.BARRIER, SecondLayer.NONE);
        assertThat(rating(AsBuilt.afterLine(variant, line))).isEqualTo(expected);
    }

    @Test
    void the_numbered_list_has_as_many_lines_here_as_the_crew_ticks() {
        for (var variant : Variant.all()) {
            int last = StepList.of(variant.method(), variant.approach()).last();
            assertThat(AsBuilt.afterLine(variant, last).done()).contains(Step.RELEASE);
        }
    }
}
