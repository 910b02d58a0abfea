package drylap.progress;

import static drylap.persistence.jooq.Tables.STEP_MARK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.DbTest;
import drylap.assembly.LapSection;
import drylap.assembly.Method;
import drylap.assembly.WorkLine;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.planning.JobFolders;
import drylap.progress.MarkResult.AlreadyMarked;
import drylap.progress.MarkResult.Marked;
import drylap.progress.MarkResult.NotYours;
import drylap.progress.MarkResult.Refused;
import drylap.security.Change;
import drylap.security.History;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DataIntegrityViolationException;

@DbTest
class StepLogDbTests {
    private static final OpeningId B = WallOfAll.plain(Method.B);
    private static final Instant NOON = Instant.parse("2026-04-13T19:00:00Z");

    @Autowired
    JobFolders folders;

    @Autowired
    StepLog log;

    @Autowired
    OpeningStates states;

    @Autowired
    History history;

    @Autowired
    DSLContext db;

    FolderId folder = new FolderId(0);

    @BeforeEach
    void store_the_folder() {
        folder = folders.save("wall", WallOfAll.folder());
    }

    private MarkRequest request(String line) {
        return MarkRequest.done(UUID.randomUUID(), folder, B, line, NOON);
    }

    private void done(Person who, String... lines) {
        for (String line : lines) assertThat(log.mark(who, request(line))).isInstanceOf(Marked.class);
    }

    private int rows() {
        return db.fetchCount(STEP_MARK, STEP_MARK.FOLDER_ID.eq(folder.value()));
    }

    @Test
    void lines_marked_in_order_are_done_and_the_next_one_is_legal() {
        done(WallOfAll.WINDOW, "RO", "APR", "PAN");

        var state = states.of(WallOfAll.WINDOW, folder, B);

        assertThat(state.done()).containsExactlyInAnyOrder("RO", "APR", "PAN");
        assertThat(state.next()).extracting(WorkLine::code).containsExactly("JF");
        assertThat(state.version())
                .isEqualTo(state.lastMark() == null ? -1 : state.lastMark().id());
        assertThat(state.doneLines().getLast().mark())
                .returns("Window", Mark::person)
                .returns(NOON, Mark::markedAt)
                .returns(WallOfAll.WINDOW.crew(), Mark::crew);
    }

    @Test
    void a_line_out_of_order_is_refused_and_the_lap_is_named_and_drawn() {
        done(WallOfAll.WINDOW, "RO");

        assertThat(log.mark(WallOfAll.WINDOW, request("JF"))).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.words())
                    .contains("reverse lap")
                    .contains("apron")
                    .contains("jamb flashing");
            assertThat(refused.lap()).hasToString("Lap[over=JF, under=APR, kind=VERTICAL, order=NORMAL]");
            assertThat(refused.asItWouldBe()).isNotNull();
            if (refused.asItWouldBe() != null)
                assertThat(LapSection.svg(refused.asItWouldBe(), LapSection.Layout.STACKED))
                        .contains("<svg");
        });
        assertThat(rows()).isEqualTo(1);
    }

    @Test
    void a_batch_sent_three_times_is_in_the_log_once_and_in_order() {
        var batch = List.of(request("RO"), request("APR"), request("JF"), request("PAN"));

        var first = log.markAll(WallOfAll.WINDOW, batch);
        var second = log.markAll(WallOfAll.WINDOW, batch);
        log.markAll(WallOfAll.WINDOW, batch);

        assertThat(first)
                .extracting(result -> result.getClass().getSimpleName())
                .containsExactly("Marked", "Marked", "Refused", "Marked");
        // The one that came too early is legal by now, so sending it again marks it: it is the same wish.
        assertThat(second)
                .extracting(result -> result.getClass().getSimpleName())
                .containsExactly("AlreadyMarked", "AlreadyMarked", "Marked", "AlreadyMarked");
        assertThat(db.select(STEP_MARK.LINE)
                        .from(STEP_MARK)
                        .where(STEP_MARK.FOLDER_ID.eq(folder.value()))
                        .orderBy(STEP_MARK.ID)
                        .fetch(STEP_MARK.LINE))
                .containsExactly("RO", "APR", "PAN", "JF");
    }

    @Test
    void eight_that_send_the_same_mark_at_once_leave_one_row() throws Exception {
        var request = request("RO");

        var results = atOnce(8, _ -> log.mark(WallOfAll.WINDOW, request));

        assertThat(results.stream().filter(Marked.class::isInstance)).hasSize(1);
        assertThat(results.stream().filter(AlreadyMarked.class::isInstance)).hasSize(7);
        assertThat(rows()).isEqualTo(1);
    }

    @Test
    void of_two_who_mark_the_same_line_at_once_the_second_hears_of_the_first() throws Exception {
        var people = List.of(WallOfAll.WINDOW, WallOfAll.SCHEDULER);

        var results = atOnce(2, i -> log.mark(people.get(i), request("RO")));

        assertThat(rows()).isEqualTo(1);
        assertThat(results.stream().filter(Marked.class::isInstance)).hasSize(1);
        var second = results.stream()
                .filter(AlreadyMarked.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertThat(second)
                .isInstanceOfSatisfying(
                        AlreadyMarked.class,
                        already -> assertThat(already.by())
                                .isEqualTo(results.get(0) instanceof Marked ? "Window" : "Scheduler"));
    }

    /** Undoing the apron while the flashing over it goes on: one of the two must lose. */
    @Test
    void a_line_and_the_undoing_of_what_it_rests_on_never_both_pass() throws Exception {
        for (int round = 0; round < 5; round++) {
            folder = folders.save("wall", WallOfAll.folder());
            done(WallOfAll.WINDOW, "RO", "APR", "PAN");

            var results = atOnce(
                    2,
                    i -> i == 0
                            ? log.mark(WallOfAll.WINDOW, request("JF"))
                            : log.undo(WallOfAll.SCHEDULER, folder, B, "PAN", "torn", UUID.randomUUID()));

            assertThat(results.stream().filter(Marked.class::isInstance)).hasSize(1);
            var state = states.of(WallOfAll.SCHEDULER, folder, B);
            assertThat(state.done().contains("JF")).isEqualTo(state.done().contains("PAN"));
        }
    }

    @Test
    void a_key_that_was_used_for_another_line_is_refused() {
        var request = request("RO");
        log.mark(WallOfAll.WINDOW, request);

        var reused = MarkRequest.done(request.key(), folder, B, "APR", NOON);

        assertThat(log.mark(WallOfAll.WINDOW, reused))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.words())
                                .contains(request.key().toString()));
        assertThat(rows()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"update step_mark set line = 'APR'", "update step_mark set note = 'x'", "delete from step_mark"})
    void the_log_only_grows(String change) {
        done(WallOfAll.WINDOW, "RO");

        assertThatThrownBy(() -> db.execute(change))
                .isInstanceOf(DataAccessException.class)
                .hasMessageContaining("only grows");
        assertThat(rows()).isEqualTo(1);
    }

    @Test
    void an_undone_line_stays_in_the_log_with_its_reason_and_in_the_history() {
        done(WallOfAll.WINDOW, "RO", "APR");

        var result = log.undo(WallOfAll.WINDOW, folder, B, "APR", "torn at the corner", UUID.randomUUID());

        assertThat(result).isInstanceOfSatisfying(Marked.class, marked -> {
            assertThat(marked.state().done()).containsExactly("RO");
            assertThat(marked.state().lastMark()).isNotNull();
        });
        assertThat(rows()).isEqualTo(3);
        assertThat(history.seenBy(WallOfAll.SCHEDULER, 5))
                .extracting(Change::what)
                .contains(
                        "undid \"apron under the sill, top edge only\" at opening %s: torn at the corner".formatted(B));
    }

    @Test
    void a_line_is_not_undone_while_others_rest_on_it_and_they_are_named() {
        done(WallOfAll.WINDOW, "RO", "APR", "PAN", "JF");

        assertThat(log.undo(WallOfAll.WINDOW, folder, B, "APR", "torn", UUID.randomUUID()))
                .isInstanceOfSatisfying(Refused.class, refused -> {
                    assertThat(refused.lines()).extracting(WorkLine::code).containsExactly("PAN", "JF");
                    assertThat(refused.words()).endsWith("undo first: jamb flashing; sill pan");
                });
        assertThat(rows()).isEqualTo(4);
    }

    @Test
    void what_is_not_done_cannot_be_undone() {
        assertThat(log.undo(WallOfAll.WINDOW, folder, B, "APR", "torn", UUID.randomUUID()))
                .isInstanceOf(Refused.class);
    }

    @Test
    void the_release_is_ticked_by_the_hand_off_only_and_taken_back_by_it_only() {
        done(WallOfAll.WINDOW, "RO", "APR", "PAN", "JF", "SET", "HF");
        assertThat(log.release(WallOfAll.WINDOW, folder, B, NOON, UUID.randomUUID()))
                .isInstanceOfSatisfying(
                        Refused.class,
                        early -> assertThat(early.lines())
                                .extracting(WorkLine::code)
                                .containsExactly("check"));
        done(WallOfAll.WINDOW, "check");

        assertThat(log.mark(WallOfAll.WINDOW, request("RELEASE"))).isInstanceOf(Refused.class);
        assertThat(log.release(WallOfAll.WINDOW, folder, B, NOON, UUID.randomUUID()))
                .isInstanceOfSatisfying(
                        Marked.class,
                        marked -> assertThat(marked.state().released()).isTrue());
        assertThat(log.undo(WallOfAll.WINDOW, folder, B, "RELEASE", "no", UUID.randomUUID()))
                .isInstanceOf(Refused.class);
        assertThat(log.undo(WallOfAll.WINDOW, folder, B, "HF", "no", UUID.randomUUID()))
                .isInstanceOf(Refused.class);
        assertThat(log.takeBack(
                        WallOfAll.WRAP, Operation.RETURN, folder, B, "RELEASE", "apron torn", UUID.randomUUID()))
                .isInstanceOfSatisfying(
                        Marked.class,
                        marked -> assertThat(marked.state().released()).isFalse());
    }

    @Test
    void each_trade_marks_its_own_lines_only() {
        var all = states.of(WallOfAll.SCHEDULER, folder, B).list().lines();
        for (WorkLine line : all)
            for (Person who : List.of(
                    WallOfAll.WINDOW, WallOfAll.WRAP, WallOfAll.SIDING, WallOfAll.TESTER, WallOfAll.SCHEDULER)) {
                boolean own = switch (line.trade()) {
                    case WINDOW -> who == WallOfAll.WINDOW || who == WallOfAll.SCHEDULER;
                    case TESTER -> who == WallOfAll.TESTER || who == WallOfAll.SCHEDULER;
                    case WRAP -> who == WallOfAll.WRAP;
                    case SIDING -> who == WallOfAll.SIDING;
                };
                var result = log.markAll(who, List.of(request(line.code()))).getFirst();
                assertThat(result instanceof NotYours)
                        .as("%s by %s", line.code(), who.name())
                        .isEqualTo(!own);
            }
    }

    @Test
    void someone_of_another_site_is_not_allowed_and_sees_no_row() {
        done(WallOfAll.WINDOW, "RO");

        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> log.mark(WallOfAll.ELSEWHERE, request("APR")))
                .withMessageNotContaining("north-site");
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> states.of(WallOfAll.ELSEWHERE, folder, B));
        assertThat(states.of(WallOfAll.ELSEWHERE, folder))
                .extracting(state -> state.opening().id().value())
                .containsExactly("south-1");
        assertThat(states.of(WallOfAll.WINDOW, folder)).hasSize(24);
        assertThat(states.states(folder)).hasSize(25);
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> states.of(WallOfAll.ADMINISTRATOR, folder));
    }

    @Test
    void an_opening_that_is_not_there_and_one_that_is_not_ones_own_are_refused_alike() {
        String foreign = refusal(B);
        String none = refusal(new OpeningId("nowhere"));

        assertThat(foreign.replace(B.value(), "X")).isEqualTo(none.replace("nowhere", "X"));
    }

    private String refusal(OpeningId opening) {
        try {
            states.of(WallOfAll.ELSEWHERE, folder, opening);
            return "allowed";
        } catch (NotAllowed refusal) {
            return String.valueOf(refusal.getMessage());
        }
    }

    @Test
    void a_line_that_the_list_does_not_have_is_refused_with_those_it_has() {
        assertThat(log.mark(WallOfAll.WINDOW, request("W1H.open")))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused ->
                                assertThat(refused.words()).contains("W1H.open").contains("RO, APR, PAN, JF"));
    }

    @ParameterizedTest
    @CsvSource({"note,2001", "reason,2001"})
    void a_text_that_is_too_long_is_named(String field, int length) {
        String text = "x".repeat(length);
        assertThatThrownBy(() -> new MarkRequest(
                        UUID.randomUUID(),
                        folder,
                        B,
                        "RO",
                        field.equals("reason") ? MarkKind.UNDONE : MarkKind.DONE,
                        NOON,
                        field.equals("note") ? text : null,
                        field.equals("reason") ? text : null,
                        List.of()))
                .hasMessageContaining(field)
                .hasMessageContaining("2000");
    }

    @Test
    void a_mark_of_an_opening_that_is_not_in_the_folder_breaks_the_tables_rule() {
        done(WallOfAll.WINDOW, "RO");
        assertThatThrownBy(() -> db.execute(
                        "insert into step_mark (folder_id, opening, site, line, kind, person_id, person, marked_at, received_at, mark_key)"
                                + " select folder_id, 'nowhere', site, line, kind, person_id, person, marked_at, received_at, gen_random_uuid()"
                                + " from step_mark"))
                .isInstanceOf(DataIntegrityViolationException.class);
    }

    private interface Turn {
        MarkResult take(int number);
    }

    private static List<MarkResult> atOnce(int count, Turn turn) throws Exception {
        var barrier = new CyclicBarrier(count);
        try (var threads = Executors.newFixedThreadPool(count)) {
            List<Callable<MarkResult>> calls = IntStream.range(0, count)
                    .<Callable<MarkResult>>mapToObj(i -> () -> {
                        barrier.await();
                        return turn.take(i);
                    })
                    .toList();
            List<MarkResult> results = new ArrayList<>();
            for (Future<MarkResult> future : threads.invokeAll(calls)) results.add(future.get());
            return results;
        }
    }
}
