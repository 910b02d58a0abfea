package drylap.handoff;

import static drylap.persistence.jooq.Tables.HANDOFF_ACT;
import static drylap.persistence.jooq.Tables.HANDOFF_ENTRY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.assembly.RainRating;
import drylap.handoff.HandoffAct.WaterTest;
import drylap.handoff.HandoffResult.AlreadyDone;
import drylap.handoff.HandoffResult.ChangedMeanwhile;
import drylap.handoff.HandoffResult.Done;
import drylap.handoff.HandoffResult.NotYet;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.planning.JobFolders;
import drylap.progress.MarkRequest;
import drylap.progress.MarkResult;
import drylap.progress.OpeningState;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.progress.WallOfAll;
import drylap.security.NotAllowed;
import drylap.security.Person;
import drylap.speech.Saying;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;

@DbTest
class HandoffDbTests {
    private static final OpeningId A1 = WallOfAll.plain(Method.A1);
    private static final OpeningId B = WallOfAll.plain(Method.B);
    private static final Instant NOON = Instant.parse("2026-04-13T19:00:00Z");

    // 290 Pa: the example of a published water test, about a wind of 50 mph
    private static final WaterTest TEST = new WaterTest(LeakDefinition.PAST_INNERMOST_PLANE, 290, 15);

    @Autowired
    JobFolders folders;

    @Autowired
    StepLog log;

    @Autowired
    OpeningStates states;

    @Autowired
    Releases releases;

    @Autowired
    Takeovers takeovers;

    @Autowired
    Inspections inspections;

    @Autowired
    Custodies custodies;

    @Autowired
    HoldPoints holdPoints;

    @Autowired
    HandoffRecords records;

    @Autowired
    DSLContext db;

    private FolderId folder = new FolderId(0);

    @BeforeEach
    void store() {
        folder = folders.save("hand-off", WallOfAll.folder());
    }

    @Test
    void an_opening_with_laps_missing_is_not_released_and_says_what_is_missing() {
        mark(WallOfAll.WINDOW, B, "RO", "APR", "PAN");

        assertThat(releases.release(WallOfAll.WINDOW, request(B)))
                .isInstanceOfSatisfying(
                        NotYet.class,
                        not -> assertThat(not.words())
                                .contains("still to do: jamb flashing")
                                .contains("may not be left like this: " + RainRating.OPEN.words()));
        assertThat(custodies.of(folder, B)).isEqualTo(Custody.UNRELEASED);
        assertThat(db.fetchCount(HANDOFF_ACT, HANDOFF_ACT.FOLDER_ID.eq(folder.value())))
                .isZero();
    }

    @Test
    void the_record_says_who_released_what_in_which_state_and_who_took_it_over() {
        install(B);
        assertThat(releases.release(WallOfAll.WINDOW, request(B))).isInstanceOf(Done.class);
        assertThat(takeovers.accept(WallOfAll.WRAP, request(B))).isInstanceOf(Done.class);

        assertThat(custodies.of(folder, B)).isInstanceOf(Custody.Accepted.class);
        assertThat(records.of(WallOfAll.SCHEDULER, folder, B))
                .extracting(HandoffAct::kind)
                .containsExactly(ActKind.ACCEPTED, ActKind.RELEASED);
        var release = records.of(WallOfAll.SCHEDULER, folder, B).getLast();
        assertThat(release.who()).isEqualTo(new HandoffAct.Who("Window", "window crew", "window-crew"));
        assertThat(release.entries()).singleElement().satisfies(entry -> {
            // method B, head flashing bonded: light rain only until the barrier is on (domain table 1.10, deduced)
            assertThat(entry.rating()).isEqualTo("R2");
            assertThat(entry.state()).contains("lower edge free");
            assertThat(entry.lastMark()).isEqualTo(state(B).version());
        });
    }

    @Test
    void a_course_is_released_whole_or_not_at_all() {
        install(B);
        mark(WallOfAll.WINDOW, A1, "RO");

        assertThat(releases.release(WallOfAll.WINDOW, request(B, A1))).isInstanceOf(NotYet.class);
        assertThat(custodies.of(folder, B)).isEqualTo(Custody.UNRELEASED);
        assertThat(state(B).released()).isFalse();

        install(A1);
        assertThat(releases.release(WallOfAll.WINDOW, request(B, A1))).isInstanceOf(Done.class);
        assertThat(custodies.of(folder, Reach.EVERYWHERE)).containsOnlyKeys(B, A1);
        assertThat(takeovers.accept(WallOfAll.WRAP, request(B, A1))).isInstanceOf(Done.class);
    }

    @Test
    void the_same_act_sent_three_times_is_one() {
        install(B);
        var request = request(B);

        assertThat(releases.release(WallOfAll.WINDOW, request)).isInstanceOf(Done.class);
        assertThat(releases.release(WallOfAll.WINDOW, request)).isInstanceOf(AlreadyDone.class);
        assertThat(releases.release(WallOfAll.WINDOW, request)).isInstanceOf(AlreadyDone.class);

        assertThat(records.of(WallOfAll.WINDOW, folder, B)).hasSize(1);
    }

    @Test
    void a_return_reopens_the_opening_from_the_layer_in_doubt() {
        install(B);
        releases.release(WallOfAll.WINDOW, request(B));
        takeovers.accept(WallOfAll.WRAP, request(B));

        assertThat(takeovers.giveBack(WallOfAll.WRAP, request(B), ReturnReason.JAMB_OPEN, null))
                .isInstanceOf(Done.class);

        var now = state(B);
        assertThat(now.done()).contains("APR", "PAN").doesNotContain("JF", "SET", "HF", "RELEASE");
        assertThat(now.next()).extracting(line -> line.code()).contains("JF");
        assertThat(now.rating()).isEqualTo(RainRating.OPEN);
        assertThat(custodies.of(folder, B))
                .isInstanceOfSatisfying(
                        Custody.Returned.class,
                        returned -> assertThat(returned.reason()).isEqualTo(ReturnReason.JAMB_OPEN));
        mark(WallOfAll.WINDOW, B, "JF", "SET", "HF", "check");
        assertThat(releases.release(WallOfAll.SCHEDULER, request(B))).isInstanceOf(Done.class);
        assertThat(takeovers.accept(WallOfAll.WRAP, request(B))).isInstanceOf(Done.class);
    }

    @Test
    void a_return_that_doubts_no_lap_takes_back_the_release_only() {
        install(B);
        releases.release(WallOfAll.WINDOW, request(B));

        assertThat(takeovers.giveBack(WallOfAll.WRAP, request(B), ReturnReason.PHOTO_MISSING, null))
                .isInstanceOf(Done.class);

        assertThat(state(B).installed()).isTrue();
        assertThat(state(B).released()).isFalse();
    }

    @Test
    void what_the_follow_on_trade_has_covered_is_not_returned_before_it_is_uncovered() {
        install(B);
        releases.release(WallOfAll.WINDOW, request(B));
        takeovers.accept(WallOfAll.WRAP, request(B));
        mark(WallOfAll.WINDOW, B, "IAS");
        inspections.test(WallOfAll.TESTER, request(B), TEST, true);
        mark(WallOfAll.WRAP, B, "W1S");

        assertThat(takeovers.giveBack(WallOfAll.WRAP, request(B), ReturnReason.HEAD_OPEN, null))
                .isInstanceOfSatisfying(
                        NotYet.class, not -> assertThat(not.words()).contains("first barrier below the sill"));
        assertThat(custodies.of(folder, B)).isInstanceOf(Custody.Accepted.class);
        assertThat(state(B).released()).isTrue();
    }

    @Test
    void the_window_crew_undoes_nothing_that_it_handed_over() {
        install(B);
        // no other line rests on the air seal, so that only the hand-over speaks against undoing it
        mark(WallOfAll.WINDOW, B, "IAS");
        releases.release(WallOfAll.WINDOW, request(B));

        assertThat(log.undo(WallOfAll.WINDOW, folder, B, "IAS", "gap", UUID.randomUUID()))
                .isInstanceOfSatisfying(
                        MarkResult.Refused.class,
                        refused -> assertThat(refused.words()).contains("the follow-on trade can return it"));
        takeovers.giveBack(WallOfAll.WRAP, request(B), ReturnReason.NOT_CLEAN, null);
        assertThat(log.undo(WallOfAll.WINDOW, folder, B, "IAS", "gap", UUID.randomUUID()))
                .isInstanceOf(MarkResult.Marked.class);
    }

    @Test
    void whoever_looked_at_an_older_state_gets_a_choice_and_changes_nothing() {
        install(B);
        var old = request(B);
        log.undo(WallOfAll.SCHEDULER, folder, B, "check", "photo blurred", UUID.randomUUID());

        assertThat(releases.release(WallOfAll.WINDOW, old))
                .isInstanceOfSatisfying(
                        ChangedMeanwhile.class,
                        changed -> assertThat(changed.words()).contains("by Scheduler"));
        assertThat(custodies.of(folder, B)).isEqualTo(Custody.UNRELEASED);
    }

    @Test
    void of_two_who_accept_at_once_the_second_hears_of_the_first() throws Exception {
        install(B);
        releases.release(WallOfAll.WINDOW, request(B));
        var start = new CyclicBarrier(2);
        Callable<HandoffResult> accept = () -> {
            var request = request(B);
            start.await();
            return takeovers.accept(WallOfAll.WRAP, request);
        };

        List<HandoffResult> results;
        try (var two = Executors.newFixedThreadPool(2)) {
            results = two.invokeAll(List.of(accept, accept)).stream()
                    .map(future -> future.resultNow())
                    .toList();
        }

        assertThat(results).hasAtLeastOneElementOfType(Done.class).hasAtLeastOneElementOfType(ChangedMeanwhile.class);
        assertThat(records.of(WallOfAll.WRAP, folder, B)).hasSize(2);
    }

    @Test
    void hold_points_hold_the_release_where_they_apply() {
        var tested = openingWithTest();
        install(tested);
        holdPoints.apply(WallOfAll.SCHEDULER, folder, WallOfAll.NORTH, HoldPoint.MOCK_UP, true);
        holdPoints.apply(WallOfAll.SCHEDULER, folder, WallOfAll.NORTH, HoldPoint.SPOT_TEST, true);

        assertThat(against(tested)).contains("the first of its kind has not passed as a mock-up");
        inspections.decide(WallOfAll.SCHEDULER, request(tested), HoldPoint.MOCK_UP, true);
        assertThat(against(tested)).containsExactly("its spot water test has not passed");
        assertThat(inspections.decide(WallOfAll.WINDOW, request(tested), HoldPoint.ROUGH_OPENING, false))
                .isInstanceOf(NotYet.class);
        inspections.decide(
                WallOfAll.WINDOW,
                new HandoffRequest(UUID.randomUUID(), folder, seen(tested), "12 mm out of square", List.of()),
                HoldPoint.ROUGH_OPENING,
                false);
        assertThat(against(tested)).contains("the rough opening was rejected");
    }

    private List<String> against(OpeningId opening) {
        return releases.against(WallOfAll.WINDOW, folder, opening).stream()
                .map(Saying::words)
                .toList();
    }

    @Test
    void a_water_test_is_kept_with_its_definition_of_a_leak() {
        var tested = openingWithTest();
        install(tested);
        mark(WallOfAll.WINDOW, tested, "IAS");

        assertThat(inspections.test(WallOfAll.TESTER, request(tested), TEST, true))
                .isInstanceOf(Done.class);
        assertThat(state(tested).done()).contains("TEST");
        assertThat(records.of(WallOfAll.TESTER, folder, tested).getFirst().test())
                .isEqualTo(TEST);

        assertThat(inspections.test(WallOfAll.TESTER, request(tested), TEST, false))
                .isInstanceOf(Done.class);
        assertThat(state(tested).done()).doesNotContain("TEST");
    }

    @Test
    void nobody_hands_over_beyond_their_role_or_their_sites() {
        install(B);
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> releases.release(WallOfAll.WRAP, request(B)));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> releases.release(WallOfAll.ELSEWHERE, request(B)));
        releases.release(WallOfAll.WINDOW, request(B));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> takeovers.accept(WallOfAll.WINDOW, request(B)));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> takeovers.accept(WallOfAll.SCHEDULER, request(B)));

        long act = records.of(WallOfAll.WINDOW, folder, B).getFirst().id();
        assertThat(records.find(WallOfAll.WINDOW, act)).isPresent();
        assertThat(records.find(WallOfAll.ELSEWHERE, act)).isEmpty();
        assertThat(records.of(WallOfAll.ELSEWHERE, folder, B)).isEmpty();
    }

    @Test
    void openings_of_two_sites_are_no_act() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> releases.release(WallOfAll.SCHEDULER, request(B, new OpeningId("south-1"))));
    }

    @Test
    void an_act_is_never_changed_or_taken_away_alone() {
        install(B);
        releases.release(WallOfAll.WINDOW, request(B));

        assertThatThrownBy(() -> db.update(HANDOFF_ACT)
                        .set(HANDOFF_ACT.PERSON, "someone else")
                        .where(HANDOFF_ACT.FOLDER_ID.eq(folder.value()))
                        .execute())
                .isInstanceOf(DataAccessException.class);
        assertThatThrownBy(() -> db.deleteFrom(HANDOFF_ENTRY)
                        .where(HANDOFF_ENTRY.FOLDER_ID.eq(folder.value()))
                        .execute())
                .isInstanceOf(DataAccessException.class);
    }

    private OpeningId openingWithTest() {
        return states.states(folder).stream()
                .filter(state -> state.opening().waterTest())
                .map(state -> state.opening().id())
                .findFirst()
                .orElseThrow();
    }

    /** All that the window crew ticks itself. */
    private void install(OpeningId opening) {
        state(opening).list().lines().stream()
                .filter(line -> line.number().isPresent() && !line.release())
                .filter(line -> !state(opening).done().contains(line.code()))
                .forEach(line -> mark(WallOfAll.WINDOW, opening, line.code()));
    }

    private void mark(Person who, OpeningId opening, String... lines) {
        for (String line : lines)
            assertThat(log.mark(who, MarkRequest.done(UUID.randomUUID(), folder, opening, line, NOON)))
                    .isInstanceOf(MarkResult.Marked.class);
    }

    private OpeningState state(OpeningId opening) {
        return states.of(WallOfAll.SCHEDULER, folder, opening);
    }

    private HandoffRequest request(OpeningId... openings) {
        return new HandoffRequest(UUID.randomUUID(), folder, seen(openings), "", List.of());
    }

    private Map<OpeningId, Long> seen(OpeningId... openings) {
        Map<OpeningId, Long> seen = new java.util.HashMap<>();
        for (var opening : openings) seen.put(opening, state(opening).version());
        return seen;
    }
}
