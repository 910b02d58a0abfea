package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.planning.JobFixture;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolutionManager;

/** The search of many units against a decoding of its lists from nothing, and against OptaPlanner's constraint streams. */
class AnnealingTests {
    private static final BooleanSupplier NEVER = () -> false;
    private static final long HEAT = 60;

    /** Leaves off what is too dear and puts everything back that was decided by then. */
    @ParameterizedTest
    @CsvSource({"30, 2, 20000", "120, 3, 20000", "300, 4, 40000"})
    void each_better_plan_costs_what_its_lists_decode_to(int openings, long seed, long moves) {
        CrewLists first = first(openings, seed);
        List<CrewLists> better = new ArrayList<>();

        CrewLists best = new Annealing(first, seed, better::add, false).run(HEAT, upTo(moves, first), NEVER);

        assertThat(better).hasSizeGreaterThan(10);
        assertThat(best).isSameAs(better.getLast());
        for (CrewLists lists : better.subList(better.size() - 10, better.size()))
            assertThat(lists.getScore()).isEqualTo(CrewLists.scoreOf(lists.schedule().tally));
        assertThat(better).isSortedAccordingTo((one, other) -> one.getScore().compareTo(other.getScore()));
        assertThat(best.getScore())
                .isGreaterThan(CrewLists.scoreOf(first(openings, seed).schedule().tally));
    }

    @Test
    void its_working_schedule_is_what_its_lists_decode_to_after_everything_that_was_taken_back() {
        CrewLists lists = first(120, 5);
        new Annealing(lists, 1, better -> {}, false).run(HEAT, upTo(20_000, lists), NEVER);
        assertThat(lists.working.start).isEqualTo(lists.schedule().start);
        assertThat(lists.working.crew).isEqualTo(lists.schedule().crew);
        assertThat(CrewLists.scoreOf(lists.working.tally)).isEqualTo(CrewLists.scoreOf(lists.schedule().tally));
    }

    @Test
    void constraint_streams_judge_its_best_plan_alike() {
        CrewLists first = first(120, 6);
        CrewLists best = new Annealing(first, 1, better -> {}, false).run(HEAT, upTo(5_000, first), NEVER);
        HardMediumSoftLongScore fast = best.getScore();
        HardMediumSoftLongScore judged = SolutionManager.<CrewLists, HardMediumSoftLongScore>create(Search.judging())
                .update(best);
        assertThat(judged).isEqualTo(fast);
    }

    @Test
    void the_same_seed_finds_the_same_plan() {
        assertThat(found(3).getScore()).isEqualTo(found(3).getScore());
        assertThat(found(3).notBefore).isEqualTo(found(3).notBefore);
        assertThat(found(4).notBefore).isNotEqualTo(found(3).notBefore);
    }

    @Test
    void it_goes_on_until_it_is_stopped() {
        CrewLists first = first(30, 1);
        AtomicInteger asked = new AtomicInteger();
        new Annealing(first, 1, better -> {}, false).run(HEAT, () -> 0, () -> asked.incrementAndGet() > 100);
        assertThat(first.meter.moves()).isGreaterThan(1_000);
    }

    /** A hot search takes dearer plans; a cold one only what is no dearer. */
    @Test
    void without_heat_the_plan_gets_never_dearer() {
        CrewLists lists = first(30, 2);
        List<CrewLists> better = new ArrayList<>();
        CrewLists best = new Annealing(lists, 1, better::add, false).run(0, upTo(5_000, lists), NEVER);
        assertThat(CrewLists.scoreOf(lists.working.tally)).isEqualTo(best.getScore());
        CrewLists hot = first(30, 2);
        CrewLists bestOfHot = new Annealing(hot, 1, one -> {}, false).run(10_000, upTo(5_000, hot), NEVER);
        assertThat(CrewLists.scoreOf(hot.working.tally)).isLessThan(bestOfHot.getScore());
    }

    /** CP-SAT proves 7,750 (TinyOptimumTests). Two of these seeds end at 10,350 where nothing may be out on the way. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void weighing_what_is_out_it_comes_past_plans_that_leave_something_out(long seed) {
        CrewLists first = lists(Problem.of(TinyJob.of(8, 12), null));
        CrewLists best = new Annealing(first, seed, better -> {}, true).run(400, upTo(30_000, first), NEVER);
        assertThat(best.getScore()).isEqualTo(HardMediumSoftLongScore.ofSoft(-7_750));
    }

    private static CrewLists found(long seed) {
        CrewLists first = first(120, 3);
        return new Annealing(first, seed, better -> {}, false).run(HEAT, upTo(3_000, first), NEVER);
    }

    private static CrewLists first(int openings, long seed) {
        return lists(Problem.of(JobFixture.job(openings, seed), null));
    }

    private static CrewLists lists(Problem problem) {
        return Construction.firstLists(problem, new Meter()).lists();
    }

    private static DoubleSupplier upTo(long moves, CrewLists lists) {
        long before = lists.meter.moves();
        return () -> (double) (lists.meter.moves() - before) / moves;
    }
}
