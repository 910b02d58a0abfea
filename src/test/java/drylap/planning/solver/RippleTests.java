package drylap.planning.solver;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.intake.GeneratedFolder;
import drylap.planning.PlanRequest;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.impl.heuristic.move.Move;
import org.optaplanner.core.impl.score.director.InnerScoreDirector;
import org.optaplanner.core.impl.solver.DefaultSolverFactory;

/** What a change reaches, decoded alone, against the same lists decoded from nothing; moves taken back or kept at random. */
class RippleTests {
    @ParameterizedTest
    @CsvSource({"8, 1, 4000", "30, 2, 4000", "60, 3, 3000", "300, 4, 1500"})
    void decoding_what_a_move_reaches_equals_decoding_everything(int openings, long seed, int moves) {
        CrewLists lists = first(openings, seed);
        Random random = new Random(seed);
        try (InnerScoreDirector<CrewLists, ?> director = director()) {
            director.setWorkingSolution(lists);
            director.calculateScore();
            var drawn = new MoveMaker().createRandomMoveIterator(director, random);
            for (int i = 0; i < moves; i++) {
                Move<CrewLists> move = drawn.next();
                if (!move.isMoveDoable(director)) continue;
                Move<CrewLists> undo = move.doMove(director);
                director.calculateScore();
                undo.doMoveOnly(director);
                if (random.nextInt(4) == 0) move.doMoveOnly(director);
                else assertSame(lists);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"8, 1, 2000", "30, 1, 4000", "60, 3, 1500"})
    void a_move_is_left_off_only_where_it_would_leave_more_out(int openings, long seed, int moves) {
        CrewLists lists = first(openings, seed);
        Random random = new Random(seed);
        int worse = 0;
        try (InnerScoreDirector<CrewLists, HardMediumSoftLongScore> director = director()) {
            director.setWorkingSolution(lists);
            HardMediumSoftLongScore before = director.calculateScore();
            var drawn = new MoveMaker().createRandomMoveIterator(director, random);
            for (int i = 0; i < moves; i++) {
                Move<CrewLists> move = drawn.next();
                if (!move.isMoveDoable(director)) continue;
                Move<CrewLists> undo = move.doMove(director);
                HardMediumSoftLongScore said = director.calculateScore();
                HardMediumSoftLongScore whole = CrewLists.scoreOf(lists.schedule().tally);
                if (whole.mediumScore() < before.mediumScore()) {
                    worse++;
                    assertThat(said).isLessThan(before);
                } else assertThat(said).isEqualTo(whole);
                undo.doMoveOnly(director);
            }
        }
        assertThat(worse).isPositive();
    }

    private static CrewLists first(int openings, long seed) {
        var folder = GeneratedFolder.of(openings, GeneratedFolder.usualSites(openings), seed);
        return Construction.firstLists(Problem.of(folder, null), new Meter()).lists();
    }

    private static InnerScoreDirector<CrewLists, HardMediumSoftLongScore> director() {
        var config = Search.config(new PlanRequest(null, null, 1L, 1), 50, EnvironmentMode.REPRODUCIBLE);
        var factory = (DefaultSolverFactory<CrewLists>) SolverFactory.<CrewLists>create(config);
        return (InnerScoreDirector<CrewLists, HardMediumSoftLongScore>)
                factory.<HardMediumSoftLongScore>getScoreDirectorFactory().buildScoreDirector();
    }

    private static void assertSame(CrewLists lists) {
        Schedule anew = lists.schedule();
        assertThat(Arrays.equals(lists.working.start, anew.start)).isTrue();
        assertThat(Arrays.equals(lists.working.crew, anew.crew)).isTrue();
        assertThat(CrewLists.scoreOf(lists.working.tally)).isEqualTo(CrewLists.scoreOf(anew.tally));
    }
}
