package drylap.hooks;

import static drylap.persistence.jooq.Tables.HOOK_DELIVERY;

import drylap.handoff.ActWritten;
import drylap.kernel.SiteId;
import drylap.security.Operation;
import drylap.security.SignIns;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import tools.jackson.databind.json.JsonMapper;

/** Writes down, in the transaction of an act, which hooks are to be told of it and what. */
@Service
final class Outbox {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final DSLContext db;
    private final HookRows hooks;
    private final SignIns people;
    private final Clock clock;

    Outbox(DSLContext db, HookRows hooks, SignIns people, Clock clock) {
        this.db = db;
        this.hooks = hooks;
        this.people = people;
        this.clock = clock;
    }

    @EventListener
    void on(ActWritten written) {
        if (!HookRequest.KINDS.contains(written.act().kind())) return;
        for (var row : hooks.inUse(Optional.empty()))
            if (row.hook().kinds().contains(written.act().kind())
                    && mayTell(row.hook(), written.act().site())) add(row.hook(), written);
    }

    /** Whether the hook's owner may see the records of a site by now. */
    boolean mayTell(Hook hook, SiteId site) {
        return hook.inUse()
                && hook.reach().covers(site)
                && people.active(hook.owner())
                        .filter(owner -> owner.may(Operation.SEE_HANDOFF_RECORD, site))
                        .isPresent();
    }

    private void add(Hook hook, ActWritten written) {
        var id = UUID.randomUUID();
        var act = written.act();
        db.insertInto(HOOK_DELIVERY)
                .set(HOOK_DELIVERY.ID, id)
                .set(HOOK_DELIVERY.HOOK_ID, hook.id())
                .set(HOOK_DELIVERY.ACT_ID, act.id())
                .set(HOOK_DELIVERY.KIND, act.kind().code())
                .set(HOOK_DELIVERY.SITE, act.site().value())
                .set(HOOK_DELIVERY.BODY, JSON.writeValueAsString(Told.of(id, written)))
                .set(HOOK_DELIVERY.MADE_AT, clock.instant())
                .set(HOOK_DELIVERY.STATE, DeliveryState.WAITING.code())
                .set(HOOK_DELIVERY.DUE_AT, clock.instant())
                .execute();
    }
}
