package drylap.hooks;

import static drylap.persistence.jooq.Tables.HOOK_DELIVERY;

import drylap.handoff.ActKind;
import drylap.kernel.Coded;
import drylap.kernel.SiteId;
import drylap.persistence.Within;
import drylap.persistence.jooq.tables.records.HookDeliveryRecord;
import drylap.security.Person;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The outbox as a table. */
@Service
public final class Deliveries {
    /** What waits after each try that failed; beyond the last it is given up, about three days after the first. Common practice, no source. */
    static final List<Duration> PAUSES = List.of(
            Duration.ofSeconds(10),
            Duration.ofMinutes(1),
            Duration.ofMinutes(5),
            Duration.ofMinutes(30),
            Duration.ofHours(2),
            Duration.ofHours(6),
            Duration.ofHours(12),
            Duration.ofHours(24),
            Duration.ofHours(24));

    /** A node that has not said by then what came of a try is thought dead. Longer than any try takes. */
    static final Duration CLAIM = Duration.ofMinutes(2);

    private final DSLContext db;
    private final TransactionTemplate transaction;
    private final Clock clock;

    Deliveries(DSLContext db, TransactionTemplate transaction, Clock clock) {
        this.db = db;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** What is due, the longest due first; nobody else gets the same before the claim ends. */
    List<Delivery> claim(int atMost) {
        Instant now = clock.instant();
        return transaction.execute(_ -> {
            List<UUID> due = db.select(HOOK_DELIVERY.ID)
                    .from(HOOK_DELIVERY)
                    .where(HOOK_DELIVERY.STATE.eq(DeliveryState.WAITING.code()), HOOK_DELIVERY.DUE_AT.le(now))
                    .orderBy(HOOK_DELIVERY.DUE_AT, HOOK_DELIVERY.ACT_ID)
                    .limit(atMost)
                    .forUpdate()
                    .skipLocked()
                    .fetch(HOOK_DELIVERY.ID);
            return due.isEmpty() ? List.of() : claim(due, now);
        });
    }

    private List<Delivery> claim(List<UUID> due, Instant now) {
        return db.update(HOOK_DELIVERY)
                .set(HOOK_DELIVERY.DUE_AT, now.plus(CLAIM))
                .set(HOOK_DELIVERY.ATTEMPTS, HOOK_DELIVERY.ATTEMPTS.plus(1))
                .set(HOOK_DELIVERY.LAST_AT, now)
                .where(HOOK_DELIVERY.ID.in(due))
                .returning()
                .fetch(Deliveries::delivery);
    }

    void delivered(Delivery one, String words) {
        end(one, DeliveryState.DELIVERED, words);
    }

    /** Tries again later, or gives up once it was tried often enough. */
    void failed(Delivery one, String words) {
        if (one.attempts() > PAUSES.size()) {
            end(one, DeliveryState.GIVEN_UP, words);
            return;
        }
        db.update(HOOK_DELIVERY)
                .set(HOOK_DELIVERY.DUE_AT, clock.instant().plus(PAUSES.get(one.attempts() - 1)))
                .set(HOOK_DELIVERY.LAST_WORDS, words)
                .where(held(one))
                .execute();
    }

    void giveUp(Delivery one, String words) {
        end(one, DeliveryState.GIVEN_UP, words);
    }

    /** The newest of a hook, as far as they tell of the person's sites. */
    public List<Delivery> of(Person who, Hook hook, int atMost) {
        return db.selectFrom(HOOK_DELIVERY)
                .where(HOOK_DELIVERY.HOOK_ID.eq(hook.id()), Within.reach(HOOK_DELIVERY.SITE, who.reach()))
                .orderBy(HOOK_DELIVERY.MADE_AT.desc(), HOOK_DELIVERY.ACT_ID.desc())
                .limit(atMost)
                .fetch(Deliveries::delivery);
    }

    private void end(Delivery one, DeliveryState state, String words) {
        db.update(HOOK_DELIVERY)
                .set(HOOK_DELIVERY.STATE, state.code())
                .setNull(HOOK_DELIVERY.DUE_AT)
                .set(HOOK_DELIVERY.LAST_WORDS, words)
                .where(held(one))
                .execute();
    }

    /** Still the try that was claimed, not one that another node has begun since. */
    private static Condition held(Delivery one) {
        return HOOK_DELIVERY
                .ID
                .eq(one.id())
                .and(HOOK_DELIVERY.ATTEMPTS.eq(one.attempts()))
                .and(HOOK_DELIVERY.STATE.eq(DeliveryState.WAITING.code()));
    }

    private static Delivery delivery(HookDeliveryRecord row) {
        return new Delivery(
                row.getId(),
                row.getHookId(),
                Coded.of(ActKind.class, row.getKind()),
                new SiteId(row.getSite()),
                row.getBody(),
                row.getMadeAt(),
                Coded.of(DeliveryState.class, row.getState()),
                row.getDueAt(),
                row.getAttempts(),
                row.getLastAt(),
                row.getLastWords());
    }
}
