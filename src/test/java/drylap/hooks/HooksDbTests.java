package drylap.hooks;

import static drylap.persistence.jooq.Tables.HOOK;
import static drylap.persistence.jooq.Tables.HOOK_DELIVERY;
import static drylap.persistence.jooq.Tables.PERSON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.DbTest;
import drylap.assembly.Method;
import drylap.assembly.WorkLine;
import drylap.handoff.ActKind;
import drylap.handoff.HandoffRequest;
import drylap.handoff.HandoffResult;
import drylap.handoff.Releases;
import drylap.handoff.ReturnReason;
import drylap.handoff.Takeovers;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.kernel.Trade;
import drylap.planning.JobFolders;
import drylap.progress.MarkRequest;
import drylap.progress.OpeningStates;
import drylap.progress.StepLog;
import drylap.progress.WallOfAll;
import drylap.security.NotAllowed;
import drylap.security.Operation;
import drylap.security.Person;
import drylap.security.Role;
import drylap.security.TestPeople;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** From an act to what another program is told of it, with a real server at the other end. */
@DbTest
class HooksDbTests {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final OpeningId B = WallOfAll.plain(Method.B);

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
    Hooks hooks;

    @Autowired
    HookRows rows;

    @Autowired
    Outbox outbox;

    @Autowired
    Deliveries deliveries;

    @Autowired
    TestPeople people;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    Clock clock;

    @Autowired
    DSLContext db;

    private final OtherProgram program = new OtherProgram();
    private final HookSettings inside = new HookSettings("allow", Duration.ofSeconds(20), Duration.ofSeconds(20));
    private FolderId folder = new FolderId(0);
    private Person owner = WallOfAll.SCHEDULER;

    @BeforeEach
    void a_wall_and_who_wants_to_hear_of_it() {
        db.deleteFrom(HOOK).execute();
        folder = folders.save("wall", WallOfAll.folder());
        owner = people.scheduler();
    }

    @AfterEach
    void close() {
        program.close();
    }

    private NewHook hook(Set<ActKind> kinds, Reach reach) {
        var made = hooks.make(owner, new HookRequest(owner.id(), "office", "https://office.example/", kinds, reach));
        db.update(HOOK)
                .set(HOOK.URL, program.url())
                .where(HOOK.ID.eq(made.hook().id()))
                .execute();
        return made;
    }

    private void sendDue() throws Exception {
        try (var sender = new Sender(inside, clock)) {
            new DueDeliveries(deliveries, rows, outbox, sender).run();
        }
    }

    private HandoffRequest request() {
        return new HandoffRequest(
                UUID.randomUUID(),
                folder,
                Map.of(B, states.of(WallOfAll.WINDOW, folder, B).version()),
                "",
                List.of());
    }

    private void workUpToTheRelease() {
        while (!states.of(WallOfAll.WINDOW, folder, B).releasable())
            states.of(WallOfAll.WINDOW, folder, B).next().stream()
                    .filter(line -> line.trade() == Trade.WINDOW)
                    .map(WorkLine::code)
                    .findFirst()
                    .ifPresentOrElse(this::mark, () -> {
                        throw new IllegalStateException("nothing is next");
                    });
    }

    private void mark(String line) {
        log.mark(
                WallOfAll.WINDOW,
                MarkRequest.done(UUID.randomUUID(), folder, B, line, Instant.parse("2026-04-13T19:00:00Z")));
    }

    private void release() {
        workUpToTheRelease();
        assertThat(releases.release(WallOfAll.WINDOW, request()).done()).isTrue();
    }

    private Delivery only(NewHook hook) {
        return deliveries.of(owner, hook.hook(), 10).getFirst();
    }

    private void makeDue() {
        db.update(HOOK_DELIVERY)
                .set(HOOK_DELIVERY.DUE_AT, clock.instant())
                .where(HOOK_DELIVERY.STATE.eq("waiting"))
                .execute();
    }

    @Test
    void a_release_an_acceptance_and_a_return_are_told_once_each_signed_with_the_secret() throws Exception {
        var hook = hook(HookRequest.KINDS, Reach.EVERYWHERE);
        release();
        takeovers.accept(WallOfAll.WRAP, request());
        takeovers.giveBack(WallOfAll.WRAP, request(), ReturnReason.NOT_CLEAN, null);

        sendDue();
        sendDue();

        List<JsonNode> told =
                program.got.stream().map(got -> JSON.readTree(got.body())).toList();
        assertThat(told)
                .extracting(one -> one.path("kind").asString())
                .containsExactlyInAnyOrder("released", "accepted", "returned");
        assertThat(told).allSatisfy(one -> {
            assertThat(one.path("openings").toString()).isEqualTo("[\"%s\"]".formatted(B));
            assertThat(one.path("site").asString()).isEqualTo("north");
            assertThat(one.path("folder").asLong()).isEqualTo(folder.value());
        });
        assertThat(program.got).allSatisfy(got -> {
            assertThat(got.signature()).isEqualTo(Signature.of(hook.secret(), got.sentAt(), got.body()));
            assertThat(got.delivery())
                    .isEqualTo(JSON.readTree(got.body()).path("delivery").asString());
        });
        assertThat(deliveries.of(owner, hook.hook(), 10))
                .extracting(Delivery::state)
                .containsOnly(DeliveryState.DELIVERED);
    }

    @Test
    void what_was_taken_back_is_never_told() throws Exception {
        hook(HookRequest.KINDS, Reach.EVERYWHERE);
        workUpToTheRelease();

        transaction.executeWithoutResult(status -> {
            assertThat(releases.release(WallOfAll.WINDOW, request())).isInstanceOf(HandoffResult.Done.class);
            status.setRollbackOnly();
        });
        takeovers.accept(WallOfAll.WRAP, request());
        sendDue();

        assertThat(db.fetchCount(HOOK_DELIVERY)).isZero();
        assertThat(program.got).isEmpty();
    }

    @Test
    void a_hook_is_told_of_its_kinds_and_its_sites_only() {
        var returns = hook(EnumSet.of(ActKind.RETURNED), Reach.EVERYWHERE);
        var south = hook(HookRequest.KINDS, Reach.of(Set.of(WallOfAll.SOUTH)));
        release();

        assertThat(deliveries.of(owner, returns.hook(), 10)).isEmpty();
        assertThat(deliveries.of(owner, south.hook(), 10)).isEmpty();
    }

    @Test
    void an_owner_who_may_not_see_a_site_is_not_told_of_it_and_one_who_may_not_any_more_is_told_nothing_more()
            throws Exception {
        owner = people.add(Role.SCHEDULER, Reach.of(Set.of(WallOfAll.SOUTH)), null);
        var south = hook(HookRequest.KINDS, Reach.EVERYWHERE);
        var everywhere = people.scheduler();
        owner = everywhere;
        var hook = hook(HookRequest.KINDS, Reach.EVERYWHERE);
        release();
        assertThat(deliveries.of(everywhere, south.hook(), 10)).isEmpty();

        db.update(PERSON)
                .set(PERSON.ACTIVE, false)
                .where(PERSON.ID.eq(owner.id().value()))
                .execute();
        sendDue();

        assertThat(program.got).isEmpty();
        assertThat(only(hook).state()).isEqualTo(DeliveryState.GIVEN_UP);
        assertThat(only(hook).lastWords()).contains("may not see this site any more");
    }

    @Test
    void what_is_not_taken_is_sent_again_later_the_same_and_given_up_in_the_end() throws Exception {
        program.status = 503;
        var hook = hook(HookRequest.KINDS, Reach.EVERYWHERE);
        release();
        sendDue();
        assertThat(only(hook).attempts()).isEqualTo(1);
        assertThat(only(hook).lastWords()).isEqualTo("answered 503");
        assertThat(only(hook).dueAt()).isAfter(clock.instant());
        sendDue();
        assertThat(program.got).hasSize(1);

        for (int i = 0; i < Deliveries.PAUSES.size(); i++) {
            assertThat(only(hook).state()).isEqualTo(DeliveryState.WAITING);
            makeDue();
            sendDue();
        }

        assertThat(only(hook).state()).isEqualTo(DeliveryState.GIVEN_UP);
        assertThat(program.got).hasSize(Deliveries.PAUSES.size() + 1);
        assertThat(program.got)
                .extracting(OtherProgram.Got::body)
                .containsOnly(only(hook).body());
        assertThat(program.got)
                .extracting(OtherProgram.Got::delivery)
                .containsOnly(only(hook).id().toString());
    }

    @Test
    void a_program_that_comes_back_is_told_then() throws Exception {
        program.status = 500;
        var hook = hook(HookRequest.KINDS, Reach.EVERYWHERE);
        release();
        sendDue();
        program.status = 204;
        makeDue();
        sendDue();

        assertThat(only(hook).state()).isEqualTo(DeliveryState.DELIVERED);
    }

    @Test
    void a_node_that_died_while_sending_leaves_the_delivery_to_the_next_and_its_late_word_counts_for_nothing()
            throws Exception {
        var hook = hook(HookRequest.KINDS, Reach.EVERYWHERE);
        release();
        var claimed = deliveries.claim(10);
        assertThat(claimed).hasSize(1);
        assertThat(deliveries.claim(10)).isEmpty();

        makeDue();
        sendDue();
        deliveries.failed(claimed.getFirst(), "too late");

        assertThat(program.got).hasSize(1);
        assertThat(only(hook).state()).isEqualTo(DeliveryState.DELIVERED);
    }

    @Test
    void a_hook_that_was_ended_is_told_nothing_more() throws Exception {
        var hook = hook(HookRequest.KINDS, Reach.EVERYWHERE);
        release();
        assertThat(hooks.end(owner, hook.hook().id())).isTrue();
        assertThat(hooks.end(owner, hook.hook().id())).isFalse();
        sendDue();

        assertThat(program.got).isEmpty();
        assertThat(only(hook).state()).isEqualTo(DeliveryState.GIVEN_UP);
        assertThat(hooks.seenBy(owner)).isEmpty();
    }

    @Test
    void everybody_looks_after_their_own_and_an_administrator_after_all() {
        var hook = hook(HookRequest.KINDS, Reach.EVERYWHERE);
        var other = people.scheduler();
        var administrator = people.add(Role.ADMINISTRATOR, Reach.NOWHERE, null);

        assertThat(hooks.seenBy(other)).isEmpty();
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> hooks.end(other, hook.hook().id()));
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> hooks.make(
                        other,
                        new HookRequest(owner.id(), "x", "https://x.example", HookRequest.KINDS, Reach.EVERYWHERE)));
        var asProgram = owner.actedFor(EnumSet.allOf(Operation.class), Reach.EVERYWHERE);
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> hooks.end(asProgram, hook.hook().id()));
        assertThat(hooks.seenBy(administrator))
                .extracting(Hook::id)
                .contains(hook.hook().id());
        assertThat(deliveries.of(administrator, hook.hook(), 10)).isEmpty();
        assertThat(hooks.end(administrator, hook.hook().id())).isTrue();
    }

    @Test
    void an_address_inside_is_refused_at_once() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> hooks.make(
                        owner, new HookRequest(owner.id(), "x", program.url(), HookRequest.KINDS, Reach.EVERYWHERE)))
                .withMessageContaining("accepted: https://");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> hooks.make(
                        owner,
                        new HookRequest(
                                owner.id(), "x", "https://x.example", Set.of(), Reach.of(Set.of(new SiteId("Q"))))))
                .withMessageContaining("accepted: released, accepted, returned");
    }
}
