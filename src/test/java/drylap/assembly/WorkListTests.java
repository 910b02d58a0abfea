package drylap.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.MarkCheck.TooEarly;
import drylap.assembly.MarkCheck.WouldReverse;
import drylap.kernel.Trade;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class WorkListTests {
    static Stream<WorkList> lists() {
        return Variant.all().stream()
                .flatMap(variant -> Stream.of(WorkList.of(variant, false), WorkList.of(variant, true)));
    }

    private static WorkList list(Method method, Approach approach, SecondLayer second) {
        return WorkList.of(new Variant(method, approach, second), true);
    }

    private static WorkList drained(Method method) {
        return list(method, Approach.DRAINAGE, SecondLayer.NONE);
    }

    private static WorkLine line(WorkList list, String code) {
        return list.line(code).orElseThrow();
    }

    private static MarkCheck check(WorkList list, String done, String code) {
        return list.check(codes(done), line(list, code));
    }

    private static Set<String> codes(String codes) {
        return codes.isBlank() ? Set.of() : new HashSet<>(Arrays.asList(codes.split(" ")));
    }

    /** Window lines as in the trade's lists (domain notes 1.8); the rest follows from laps and contract. */
    @ParameterizedTest
    @CsvSource({
        "A,  drainage, tuck, RO APR PAN bed SET seal-jambs JF HF RELEASE IAS TEST W1S W1J W1H W2S APR.secure JF.secure W2J W2H CLD",
        "A1, barrier,  none, RO W1H.open APR SET seal-jambs JF HF W1H.close IAS RELEASE TEST CLD",
        "B,  barrier,  none, RO APR JF SET HF check RELEASE IAS TEST W1S APR.secure JF.secure W1J W1H CLD",
        "B1, drainage, drain-between, RO W1H.open APR+PAN JF SET HF W1H.close RELEASE IAS TEST W2S TRM SET.edge W2J W2H CLD"
    })
    void a_list_holds_the_lines_of_all_trades_in_the_customary_order(
            Method method, String approach, String second, String codes) {
        var list = list(
                method,
                drylap.kernel.Coded.of(Approach.class, approach),
                drylap.kernel.Coded.of(SecondLayer.class, second));

        assertThat(list.lines()).extracting(WorkLine::code).containsExactly(codes.split(" "));
    }

    @ParameterizedTest
    @MethodSource("lists")
    void a_list_covers_every_step_once_and_names_each_line_once(WorkList list) {
        var steps = list.lines().stream().flatMap(l -> l.steps().stream()).toList();
        var onTheWall = ListedWork.onTheWallBefore(list.variant());
        boolean tested = list.line("TEST").isPresent();
        var order = tested ? StepOrder.withWaterTest(list.variant()) : StepOrder.of(list.variant());

        assertThat(steps).doesNotHaveDuplicates();
        assertThat(Stream.concat(steps.stream(), onTheWall.stream()))
                .containsExactlyInAnyOrderElementsOf(order.steps());
        assertThat(list.lines()).extracting(WorkLine::code).doesNotHaveDuplicates();
        assertThat(list.lines().stream().filter(WorkLine::release)).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("lists")
    void the_numbered_lines_are_those_of_the_step_list(WorkList list) {
        var stepList = StepList.of(list.variant().method(), list.variant().approach());
        var numbered = list.lines().stream().filter(l -> l.number().isPresent()).toList();

        assertThat(numbered)
                .extracting(WorkLine::text)
                .isEqualTo(
                        stepList.steps().stream().map(StepList.ListedStep::text).toList());
        assertThat(numbered)
                .extracting(l -> l.number().getAsInt())
                .isEqualTo(stepList.steps().stream()
                        .map(StepList.ListedStep::number)
                        .toList());
        assertThat(numbered)
                .extracting(WorkLine::installBlock)
                .isEqualTo(stepList.steps().stream()
                        .map(StepList.ListedStep::install)
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("lists")
    void the_lines_done_by_a_number_make_the_opening_as_the_numbered_list_has_it(WorkList list) {
        var stepList = StepList.of(list.variant().method(), list.variant().approach());
        for (int number = 0; number <= stepList.last(); number++) {
            var done = list.doneBy(number);
            assertThat(list.built(done)).isEqualTo(AsBuilt.afterLine(list.variant(), number));
            assertThat(list.installed(done)).isEqualTo(stepList.complete(number));
        }
    }

    /** By hand from the lap tables: what lies outboard was put on before what must lie under it. */
    @ParameterizedTest
    @CsvSource({
        "B,  RO,                      JF,        JF over APR",
        "B,  RO APR,                  JF,        JF over PAN",
        "B,  RO APR PAN,              SET,       FLJ over JF",
        "A,  RO APR,                  SET,       FLS over PAN",
        "A,  RO APR PAN bed,          JF,        JF over FLJ",
        "A,  RO APR PAN bed SET,      HF,        HF over JF",
        "A1, RO,                      HF,        W1H over HF",
        "A1, RO W1H.open APR PAN SET seal-jambs JF, W1H.close, W1H over HF",
        "B1, RO W1H.open,             JF,        JF over APR",
        "A,  RO APR PAN bed SET seal-jambs JF HF RELEASE IAS TEST, APR.secure, APR over W1S",
        "A,  RO APR PAN bed SET seal-jambs JF HF RELEASE IAS TEST, W1J, W1J over W1S"
    })
    void a_line_that_would_reverse_a_lap_names_it(Method method, String done, String code, String lap) {
        assertThat(check(drained(method), done, code)).isInstanceOfSatisfying(WouldReverse.class, reverse -> {
            assertThat(reverse.lap().over() + " over " + reverse.lap().under()).isEqualTo(lap);
            assertThat(reverse.asItWouldBe().reversed()).containsExactly(reverse.lap());
            assertThat(RainCheck.of(reverse.asItWouldBe()).rating()).isEqualTo(RainRating.OPEN);
            assertThat(LapSection.svg(reverse.asItWouldBe(), LapSection.Layout.STACKED))
                    .startsWith("<svg");
        });
    }

    @ParameterizedTest
    @CsvSource({
        "A,  '',                      APR,       RO",
        "A,  RO APR PAN,              SET,       bed",
        "A,  RO APR PAN bed SET,      JF,        seal-jambs",
        "A1, RO,                      APR,       W1H.open",
        "A,  RO APR PAN bed SET seal-jambs JF HF IAS TEST, W1S, RELEASE",
        "A,  RO APR PAN bed SET seal-jambs JF HF RELEASE,  W1S, IAS TEST",
        "B,  RO APR PAN JF SET HF,    RELEASE,   check",
        "B,  RO APR PAN JF SET HF,    TEST,      IAS",
        "A1, RO W1H.open APR PAN SET seal-jambs JF HF W1H.close IAS TEST, CLD, RELEASE"
    })
    void a_line_that_only_comes_too_early_says_what_comes_first(Method method, String done, String code, String first) {
        assertThat(check(drained(method), done, code))
                .isInstanceOfSatisfying(
                        TooEarly.class,
                        early -> assertThat(early.first())
                                .extracting(WorkLine::code)
                                .containsExactly(first.split(" ")));
    }

    @Test
    void a_done_line_is_done_and_the_release_is_the_hand_offs() {
        var list = drained(Method.B);

        assertThat(check(list, "RO APR", "APR")).isInstanceOf(MarkCheck.AlreadyDone.class);
        assertThat(check(list, "RO APR PAN JF SET HF check", "RELEASE")).isInstanceOf(MarkCheck.ByRelease.class);
        assertThat(list.next(codes("RO APR PAN JF SET HF check")))
                .extracting(WorkLine::code)
                .containsExactly("IAS");
    }

    @Test
    void a_refusal_speaks_the_trades_words() {
        assertThat(check(drained(Method.B), "RO", "JF").words())
                .isEqualTo("reverse lap: apron lies over jamb flashing, water runs behind the apron;"
                        + " first: apron under the sill, top edge only; sill pan");
    }

    @Test
    void what_rests_on_a_line_is_every_done_line_that_waits_for_it() {
        var list = drained(Method.B);

        assertThat(list.restingOn(codes("RO APR PAN JF SET"), line(list, "PAN")))
                .extracting(WorkLine::code)
                .containsExactly("JF", "SET");
        assertThat(list.restingOn(codes("RO APR PAN JF SET"), line(list, "SET")))
                .isEmpty();
    }

    @Test
    void a_trade_without_a_line_never_finishes() {
        var list = WorkList.of(new Variant(Method.A1, Approach.DRAINAGE, SecondLayer.NONE), false);
        var all = list.lines().stream().map(WorkLine::code).toList();

        assertThat(list.finished(all, Trade.WRAP)).isFalse();
        assertThat(list.finished(all, Trade.TESTER)).isFalse();
        assertThat(list.finished(all, Trade.SIDING)).isTrue();
    }
}
