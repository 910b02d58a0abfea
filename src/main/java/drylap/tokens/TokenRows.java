package drylap.tokens;

import static drylap.persistence.jooq.Tables.API_TOKEN;
import static drylap.persistence.jooq.Tables.PERSON;

import drylap.kernel.Coded;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.ApiTokenRecord;
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

/** Tokens as rows. */
@Service
final class TokenRows {
    private final DSLContext db;

    TokenRows(DSLContext db) {
        this.db = db;
    }

    long add(TokenRequest asked, byte[] hash, String madeBy, Instant now) {
        return db.insertInto(API_TOKEN)
                .set(API_TOKEN.PERSON_ID, asked.person().value())
                .set(API_TOKEN.NAME, asked.name())
                .set(API_TOKEN.SECRET_HASH, hash)
                .set(
                        API_TOKEN.SCOPES,
                        asked.scopesInOrder().stream().map(Scope::code).toArray(String[]::new))
                .set(API_TOKEN.SITES, names(asked.reach()))
                .set(API_TOKEN.MADE_BY, madeBy)
                .set(API_TOKEN.MADE_AT, now)
                .set(API_TOKEN.EXPIRES_AT, asked.expiresAt())
                .returning(API_TOKEN.ID)
                .fetchSingle(API_TOKEN.ID);
    }

    Optional<ApiToken> find(long id) {
        return fetch(API_TOKEN.ID.eq(id)).stream().findFirst();
    }

    Optional<ApiToken> bySecret(byte[] hash) {
        return fetch(API_TOKEN.SECRET_HASH.eq(hash)).stream().findFirst();
    }

    /** Newest first. */
    List<ApiToken> all(Optional<PersonId> owner) {
        return fetch(owner.map(one -> API_TOKEN.PERSON_ID.eq(one.value())).orElse(DSL.trueCondition()));
    }

    private List<ApiToken> fetch(Condition which) {
        return db.select(API_TOKEN.fields())
                .select(PERSON.NAME)
                .from(API_TOKEN)
                .join(PERSON)
                .on(PERSON.ID.eq(API_TOKEN.PERSON_ID))
                .where(which)
                .orderBy(API_TOKEN.ID.desc())
                .fetch(TokenRows::token);
    }

    private static String @Nullable [] names(Reach reach) {
        return reach.everySite()
                ? null
                : reach.sites().stream().map(SiteId::value).sorted().toArray(String[]::new);
    }

    private static ApiToken token(Record joined) {
        ApiTokenRecord row = joined.into(API_TOKEN);
        return new ApiToken(
                row.getId(),
                new PersonId(row.getPersonId()),
                joined.get(PERSON.NAME),
                row.getName(),
                Arrays.stream(row.getScopes())
                        .map(code -> Coded.of(Scope.class, code))
                        .collect(Collectors.toSet()),
                row.getSites() == null
                        ? Reach.EVERYWHERE
                        : Reach.of(
                                Arrays.stream(row.getSites()).map(SiteId::new).toList()),
                row.getMadeBy(),
                row.getMadeAt(),
                row.getExpiresAt(),
                row.getUsedAt(),
                row.getRevokedAt(),
                row.getRevokedBy());
    }
}
