package drylap.planning.solver;

import static drylap.planning.JobFixture.MONDAY;
import static drylap.planning.solver.WallOfTwo.at;
import static org.assertj.core.api.Assertions.assertThat;

import drylap.kernel.OpeningId;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.planning.Bound;
import drylap.planning.BoundKind;
import drylap.planning.Explainer;
import drylap.planning.JobFolder;
import drylap.planning.Ledger;
import drylap.planning.Plan;
import drylap.planning.PublishedVisit;
import drylap.planning.Visit;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class StartReasonsTests {
    private static Visit visit(Trade trade, String opening, int level, Instant start) {
        return new Visit(
                WallOfTwo.crew(trade),
                start.atZone(drylap.planning.JobFixture.ZONE).toLocalDate(),
                1,
                WallOfTwo.WALL,
                level,
                new OpeningId(opening),
                Task.of(trade),
                start,
                start.plusSeconds(3600));
    }

    private static Plan plan(Visit... visits) {
        return new Plan(
                at(0, 8, 0),
                at(2, 16, 0),
                List.of(visits),
                List.of(),
                List.of(),
                List.of(),
                new Ledger(List.of(), 0, 0, 0));
    }

    private static Bound binding(JobFolder folder, Plan plan, Visit asked) {
        List<Bound> binding = Explainer.standard()
                .why(folder, plan, asked.opening(), asked.task())
                .orElseThrow()
                .binding();
        assertThat(binding).hasSize(1);
        assertThat(binding.getFirst().at()).isEqualTo(asked.start());
        return binding.getFirst();
    }

    @Test
    void the_first_stop_of_a_day_waits_for_the_shift_and_setting_up() {
        Visit first = visit(Trade.WINDOW, "A", 1, at(0, 8, 15));
        Bound bound = binding(new WallOfTwo().opening("A").folder(), plan(first), first);
        assertThat(bound.kind()).isEqualTo(BoundKind.SHIFT_START);
        assertThat(bound.words()).contains("Mon 13 Apr 08:00", "15 min of setting up");
    }

    @Test
    void a_later_stop_waits_for_the_one_before() {
        Visit first = visit(Trade.WINDOW, "A", 1, at(0, 8, 15));
        Visit second = visit(Trade.WINDOW, "B", 1, at(0, 9, 15));
        Bound bound = binding(new WallOfTwo().opening("A").opening("B").folder(), plan(first, second), second);
        assertThat(bound.kind()).isEqualTo(BoundKind.STOP_BEFORE);
        assertThat(bound.words()).contains("the install of A", "09:15");
    }

    @Test
    void a_pinned_stop_before_is_named_as_pinned() {
        Visit first = visit(Trade.WINDOW, "A", 1, at(0, 8, 15));
        Visit second = visit(Trade.WINDOW, "B", 1, at(0, 9, 15));
        JobFolder folder = new WallOfTwo()
                .opening("A")
                .opening("B")
                .folder()
                .withPublished(List.of(new PublishedVisit(first, true)));
        assertThat(binding(folder, plan(first, second), second).kind()).isEqualTo(BoundKind.PINNED_BEFORE);
    }

    @Test
    void a_pinned_stop_behind_says_by_when_it_must_end() {
        Visit first = visit(Trade.WINDOW, "A", 1, at(0, 8, 15));
        Visit second = visit(Trade.WINDOW, "B", 1, at(0, 10, 0));
        JobFolder folder = new WallOfTwo()
                .opening("A")
                .opening("B")
                .folder()
                .withPublished(List.of(new PublishedVisit(second, true)));
        var bounds = Explainer.standard()
                .why(folder, plan(first, second), first.opening(), Task.INSTALL)
                .orElseThrow()
                .bounds();
        assertThat(bounds)
                .filteredOn(bound -> bound.kind() == BoundKind.PINNED_BEHIND)
                .singleElement()
                .satisfies(bound -> assertThat(bound.words()).contains("must end by Mon 13 Apr 10:00"));
    }

    @Test
    void the_break_is_named() {
        Visit first = visit(Trade.WINDOW, "A", 1, at(0, 10, 30));
        Visit second = visit(Trade.WINDOW, "B", 1, at(0, 12, 30));
        Bound bound = binding(new WallOfTwo().opening("A").opening("B").folder(), plan(first, second), second);
        assertThat(bound.kind()).isEqualTo(BoundKind.BREAK);
    }

    @Test
    void a_wall_that_dries_after_rain_is_shut_until_it_is_dry() {
        Visit first = visit(Trade.WINDOW, "A", 1, at(0, 13, 0));
        Bound bound = binding(new WallOfTwo().opening("A").rain(9).folder(), plan(first), first);
        assertThat(bound.kind()).isEqualTo(BoundKind.WALL_SHUT);
        assertThat(bound.words())
                .contains("wall west", "13:00", "drying after rain")
                .doesNotContain("cold", "dark");
    }

    @Test
    void cladding_waits_for_the_last_install_of_its_course() {
        Visit a = visit(Trade.WINDOW, "A", 1, at(0, 8, 15));
        Visit b = visit(Trade.WINDOW, "B", 1, at(0, 9, 15));
        Visit clad = visit(Trade.SIDING, "A", 1, at(0, 10, 15));
        Bound bound = binding(new WallOfTwo().opening("A").opening("B").folder(), plan(a, b, clad), clad);
        assertThat(bound.kind()).isEqualTo(BoundKind.COURSE_INSTALLS);
        assertThat(bound.words()).contains("last install ends", "10:15");
    }

    @Test
    void cladding_waits_for_the_level_below() {
        Visit a = visit(Trade.WINDOW, "A", 1, at(0, 8, 15));
        Visit b = visit(Trade.WINDOW, "B", 2, at(0, 9, 15));
        Visit low = visit(Trade.SIDING, "A", 1, at(0, 13, 0));
        Visit high = visit(Trade.SIDING, "B", 2, at(0, 14, 0));
        JobFolder folder =
                new WallOfTwo().opening("A").opening("B", 2, MONDAY, false).folder();
        var binding = Explainer.standard()
                .why(folder, plan(a, b, low, high), high.opening(), Task.CLAD)
                .orElseThrow()
                .binding();
        assertThat(binding).extracting(Bound::kind).contains(BoundKind.LEVEL_BELOW);
    }

    @Test
    void a_test_waits_for_the_cure() {
        Visit a = visit(Trade.WINDOW, "A", 1, at(0, 8, 15));
        Visit test = visit(Trade.TESTER, "A", 1, at(1, 9, 15));
        JobFolder folder = new WallOfTwo().opening("A", 1, MONDAY, true).folder();
        Bound bound = binding(folder, plan(a, test), test);
        assertThat(bound.kind()).isEqualTo(BoundKind.CURE);
        assertThat(bound.words()).contains("24 h");
    }

    @Test
    void a_window_that_comes_tomorrow_is_named_though_the_shift_binds() {
        Visit a = visit(Trade.WINDOW, "A", 1, at(1, 8, 15));
        JobFolder folder =
                new WallOfTwo().opening("A", 1, MONDAY.plusDays(1), false).folder();
        var why = Explainer.standard()
                .why(folder, plan(a), a.opening(), Task.INSTALL)
                .orElseThrow();
        assertThat(why.bounds())
                .filteredOn(bound -> bound.kind() == BoundKind.DELIVERY)
                .singleElement()
                .satisfies(bound -> assertThat(bound.at()).isEqualTo(at(1, 0, 0)));
        assertThat(why.binding()).extracting(Bound::kind).containsExactly(BoundKind.SHIFT_START);
    }

    @Test
    void what_waits_though_nothing_binds_waits_by_choice() {
        Visit later = visit(Trade.WINDOW, "A", 1, at(0, 10, 0));
        Bound bound = binding(new WallOfTwo().opening("A").folder(), plan(later), later);
        assertThat(bound.kind()).isEqualTo(BoundKind.CHOICE);
        assertThat(bound.words()).contains("08:15", "planner's choice");
    }
}
