package drylap.hooks;

import static drylap.persistence.jooq.Tables.HOOK;
import static drylap.persistence.jooq.Tables.PERSON;

import drylap.handoff.ActKind;
import drylap.kernel.Coded;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.HookRecord;
import java.net.URI;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Hooks as rows. */
@Service
final class HookRows {
    private final DSLContext db;

    HookRows(DSLContext db) {
        this.db = db;
    }

    /** With what signs, which nobody is shown. */
    record Row(Hook hook, String secret) {}

    long add(HookRequest asked, String secret, String madeBy, Instant now) {
        return db.insertInto(HOOK)
                .set(HOOK.PERSON_ID, asked.owner().value())
                .set(HOOK.NAME, asked.name())
                .set(HOOK.URL, asked.url())
                .set(HOOK.SECRET, secret)
                .set(
                        HOOK.KINDS,
                        asked.kinds().stream().sorted().map(ActKind::code).toArray(String[]::new))
                .set(HOOK.SITES, names(asked.reach()))
                .set(HOOK.MADE_BY, madeBy)
                .set(HOOK.MADE_AT, now)
                .returning(HOOK.ID)
                .fetchSingle(HOOK.ID);
    }

    Optional<Row> find(long id) {
        return fetch(HOOK.ID.eq(id)).stream().findFirst();
    }

    /** Newest first. */
    List<Row> inUse(Optional<PersonId> owner) {
        Condition whose = owner.map(one -> HOOK.PERSON_ID.eq(one.value())).orElse(DSL.trueCondition());
        return fetch(whose.and(HOOK.ENDED_AT.isNull()));
    }

    private List<Row> fetch(Condition which) {
        return db.select(HOOK.fields())
                .select(PERSON.NAME)
                .from(HOOK)
                .join(PERSON)
                .on(PERSON.ID.eq(HOOK.PERSON_ID))
                .where(which)
                .orderBy(HOOK.ID.desc())
                .fetch(HookRows::row);
    }

    private static String @Nullable [] names(Reach reach) {
        return reach.everySite()
                ? null
                : reach.sites().stream().map(SiteId::value).sorted().toArray(String[]::new);
    }

    private static Row row(Record joined) {
        HookRecord row = joined.into(HOOK);
        Reach reach = row.getSites() == null
                ? Reach.EVERYWHERE
                : Reach.of(Arrays.stream(row.getSites()).map(SiteId::new).toList());
        return new Row(
                new Hook(
                        row.getId(),
                        new PersonId(row.getPersonId()),
                        joined.get(PERSON.NAME),
                        row.getName(),
                        URI.create(row.getUrl()),
                        Arrays.stream(row.getKinds())
                                .map(code -> Coded.of(ActKind.class, code))
                                .collect(Collectors.toSet()),
                        reach,
                        row.getMadeBy(),
                        row.getMadeAt(),
                        row.getEndedAt()),
                row.getSecret());
    }
}
