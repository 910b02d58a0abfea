package drylap.progress;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.assembly.Apron;
import drylap.assembly.Method;
import drylap.assembly.RainRating;
import drylap.assembly.SecondLayer;
import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.PersonId;
import drylap.kernel.Rule;
import drylap.kernel.Rules;
import drylap.kernel.Task;
import drylap.planning.JobFolder;
import drylap.progress.Exposed.Part;
import drylap.sites.Opening;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OpeningStateTests {
    private static final Instant START = Instant.parse("2026-04-13T15:00:00Z");
    private static final Instant NOW = START.plus(Duration.ofDays(12));

    private static Opening opening(Method method, SecondLayer second, JobFolder folder) {
        return folder.openings().stream()
                .filter(o -> o.method() == method && o.secondLayer() == second)
                .filter(o -> o.approach() == drylap.assembly.Approach.DRAINAGE)
                .findFirst()
                .orElseThrow();
    }

    private static Opening opening(Method method, SecondLayer second) {
        return opening(method, second, WallOfAll.folder());
    }

    private static Mark mark(int id, Opening opening, String line, MarkKind kind, Instant at) {
        String reason = kind == MarkKind.UNDONE ? "torn" : null;
        return new Mark(
                id,
                opening.id(),
                line,
                kind,
                new PersonId(1),
                "Someone",
                null,
                at,
                at.plusSeconds(5),
                UUID.randomUUID(),
                null,
                reason,
                List.of());
    }

    /** One line an hour from the start. */
    private static List<Mark> hourly(Opening opening, String lines) {
        List<Mark> marks = new ArrayList<>();
        for (String line : lines.split(" "))
            marks.add(mark(marks.size() + 1, opening, line, MarkKind.DONE, START.plus(Duration.ofHours(marks.size()))));
        return marks;
    }

    private static OpeningState state(Opening opening, List<Mark> marks) {
        return state(opening, marks, Rules.STANDARD);
    }

    private static OpeningState state(Opening opening, List<Mark> marks, Rules rules) {
        return new Replay(new FolderId(1), NOW, new Replay.Judge()).of(opening, marks, rules);
    }

    private static @Nullable Exposed exposed(OpeningState state, Part part) {
        return state.exposures().stream()
                .filter(e -> e.part() == part)
                .findFirst()
                .orElse(null);
    }

    @Test
    void a_bare_wall_is_open_and_begins_with_its_acceptance() {
        var state = state(opening(Method.A, SecondLayer.NONE), List.of());

        assertThat(state.rating()).isEqualTo(RainRating.OPEN);
        assertThat(state.next()).extracting(WorkLine::code).containsExactly("RO");
        assertThat(state.apron()).isEqualTo(new Apron.Absent());
        assertThat(state.plane()).isEqualTo(Apron.Plane.FIRST_BARRIER);
        assertThat(state.exposures()).isEmpty();
        assertThat(state.version()).isZero();
    }

    @Test
    void an_imported_line_is_done_by_nobody_at_the_folders_time() {
        var folder = WallOfAll.folder(Method.B, 4, WallOfAll.IMPORTED);
        var state = state(opening(Method.B, SecondLayer.NONE, folder), List.of());

        assertThat(state.done()).containsExactlyInAnyOrder("RO", "APR", "PAN", "JF");
        assertThat(state.doneLines()).allSatisfy(line -> {
            assertThat(line.mark()).isNull();
            assertThat(line.at()).isEqualTo(WallOfAll.IMPORTED);
        });
        assertThat(state.doneUpTo()).isEqualTo(4);
        assertThat(state.doneUpToAt()).isEqualTo(WallOfAll.IMPORTED);
    }

    @Test
    void an_imported_line_that_was_undone_is_not_done() {
        var folder = WallOfAll.folder(Method.B, 4, WallOfAll.IMPORTED);
        var opening = opening(Method.B, SecondLayer.NONE, folder);
        var state = state(opening, List.of(mark(7, opening, "JF", MarkKind.UNDONE, START)));

        assertThat(state.done()).containsExactlyInAnyOrder("RO", "APR", "PAN");
        assertThat(state.doneUpTo()).isEqualTo(3);
        assertThat(state.version()).isEqualTo(7);
        assertThat(state.next()).extracting(WorkLine::code).containsExactly("JF");
    }

    @Test
    void the_apron_counts_its_own_days_from_its_own_mark() {
        var opening = opening(Method.A, SecondLayer.NONE);
        var apron = exposed(state(opening, hourly(opening, "RO APR PAN")), Part.APRON);

        // 12 days less one hour: 11 whole days gone, 30 - 11.96 leaves 18 whole days.
        assertThat(apron)
                .isNotNull()
                .returns(START.plus(Duration.ofHours(1)), Exposed::since)
                .returns(11, Exposed::days)
                .returns(18, Exposed::daysLeft)
                .returns(30.0, Exposed::limitDays)
                .returns("apron: 18 of 30 days of sun left", Exposed::words);
    }

    @Test
    void a_new_apron_begins_to_count_anew() {
        var opening = opening(Method.A, SecondLayer.NONE);
        var marks = hourly(opening, "RO APR");
        marks.add(mark(3, opening, "APR", MarkKind.UNDONE, START.plus(Duration.ofDays(10))));
        marks.add(mark(4, opening, "APR", MarkKind.DONE, START.plus(Duration.ofDays(11))));

        assertThat(exposed(state(opening, marks), Part.APRON)).isNotNull().returns(1, Exposed::days);
    }

    @Test
    void a_contractors_own_limit_counts_and_beyond_it_the_days_are_negative() {
        var opening = opening(Method.A, SecondLayer.NONE);
        var rules = Rules.STANDARD.with(Rule.APRON_UV_DAYS, 10);

        assertThat(exposed(state(opening, hourly(opening, "RO APR"), rules), Part.APRON))
                .isNotNull()
                .returns(-2, Exposed::daysLeft)
                .returns("apron: 2 days beyond its 10 days of sun", Exposed::words);
    }

    @Test
    void a_barrier_that_was_there_before_the_log_says_that_its_days_are_unknown() {
        assertThat(exposed(state(opening(Method.A1, SecondLayer.NONE), List.of()), Part.FIRST_BARRIER))
                .isNotNull()
                .returns(null, Exposed::since)
                .returns(null, Exposed::daysLeft)
                .returns("first barrier: in the sun since before the log, days unknown", Exposed::words);
    }

    @Test
    void a_barrier_counts_from_its_first_piece_until_it_is_covered() {
        var opening = opening(Method.B, SecondLayer.TUCK);
        String before = "RO APR PAN JF SET HF check RELEASE W1S W1J";
        var bare = exposed(state(opening, hourly(opening, before)), Part.FIRST_BARRIER);
        assertThat(bare).isNotNull().returns(START.plus(Duration.ofHours(8)), Exposed::since);

        var half = state(opening, hourly(opening, before + " W1H W2S"));
        assertThat(half.exposures())
                .extracting(Exposed::part)
                .containsExactly(Part.APRON, Part.FIRST_BARRIER, Part.SECOND_BARRIER);

        String all = before + " W1H W2S APR.secure JF.secure W2J W2H";
        assertThat(state(opening, hourly(opening, all)).exposures())
                .extracting(Exposed::part)
                .containsExactly(Part.APRON, Part.SECOND_BARRIER);
        assertThat(state(opening, hourly(opening, all + " CLD")).exposures()).isEmpty();
    }

    @Test
    void an_apron_that_the_second_barrier_lies_over_is_out_of_the_sun() {
        var opening = opening(Method.B1, SecondLayer.DRAIN_BETWEEN);
        var state = state(opening, hourly(opening, "RO W1H.open APR+PAN JF SET HF W1H.close RELEASE W2S"));

        assertThat(exposed(state, Part.APRON)).isNull();
        assertThat(state.plane()).isEqualTo(Apron.Plane.BETWEEN_BARRIERS);
    }

    @Test
    void a_clock_that_runs_ahead_is_not_believed() {
        var opening = opening(Method.A, SecondLayer.NONE);
        var ahead = new Mark(
                1,
                opening.id(),
                "RO",
                MarkKind.DONE,
                new PersonId(1),
                "Someone",
                null,
                START.plus(Duration.ofDays(400)),
                START,
                UUID.randomUUID(),
                null,
                null,
                List.of());

        assertThat(ahead.at()).isEqualTo(START);
    }

    @Test
    void tasks_finish_as_their_lines_are_done() {
        var opening = opening(Method.B, SecondLayer.NONE);
        String install = "RO APR PAN JF SET HF";

        assertThat(state(opening, hourly(opening, "RO APR PAN JF SET")).finished())
                .isEmpty();
        assertThat(state(opening, hourly(opening, install)).finished())
                .containsExactly(new FinishedTask(Task.INSTALL, START.plus(Duration.ofHours(5))));
        assertThat(state(opening, hourly(opening, install + " check IAS RELEASE TEST W1S APR.secure JF.secure W1J W1H"))
                        .finished())
                .extracting(FinishedTask::task)
                .containsExactlyElementsOf(
                        opening.waterTest()
                                ? List.of(Task.INSTALL, Task.TEST, Task.WRAP)
                                : List.of(Task.INSTALL, Task.WRAP));
    }

    @Test
    void a_release_waits_for_the_last_line_before_it() {
        var opening = opening(Method.A1, SecondLayer.NONE);
        String almost = "RO W1H.open APR PAN SET seal-jambs JF HF";

        assertThat(state(opening, hourly(opening, almost)).releasable()).isFalse();
        assertThat(state(opening, hourly(opening, almost + " W1H.close")).releasable())
                .isTrue();
        assertThat(state(opening, hourly(opening, almost + " W1H.close RELEASE"))
                        .releasable())
                .isFalse();
        assertThat(state(opening, hourly(opening, almost + " W1H.close RELEASE"))
                        .released())
                .isTrue();
    }
}
