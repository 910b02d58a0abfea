package drylap.security;

import static drylap.persistence.jooq.Tables.PERSON;
import static drylap.persistence.jooq.Tables.PERSON_SITE;

import drylap.kernel.Coded;
import drylap.kernel.CrewId;
import drylap.kernel.Language;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import drylap.kernel.SiteId;
import drylap.persistence.jooq.tables.records.PersonRecord;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** People as rows. */
@Service
final class PersonRows {
    private final DSLContext db;

    PersonRows(DSLContext db) {
        this.db = db;
    }

    Optional<PersonRecord> byName(String signInName) {
        return db.selectFrom(PERSON)
                .where(DSL.lower(PERSON.SIGN_IN_NAME).eq(signInName.strip().toLowerCase(Locale.ROOT)))
                .fetchOptional();
    }

    Optional<PersonRecord> byId(PersonId id) {
        return db.selectFrom(PERSON).where(PERSON.ID.eq(id.value())).fetchOptional();
    }

    List<PersonRecord> all() {
        return db.selectFrom(PERSON).orderBy(DSL.lower(PERSON.NAME), PERSON.ID).fetch();
    }

    boolean none() {
        return !db.fetchExists(PERSON);
    }

    /** Two who ask at once take turns until the transaction ends. */
    boolean noneForSure() {
        db.execute("lock table person in share row exclusive mode");
        return none();
    }

    List<PersonRecord> demo() {
        return db.selectFrom(PERSON)
                .where(PERSON.DEMO.isTrue())
                .orderBy(PERSON.ID)
                .fetch();
    }

    void removeDemo() {
        db.deleteFrom(PERSON).where(PERSON.DEMO.isTrue()).execute();
    }

    void signOff(PersonId id) {
        db.update(PERSON)
                .set(PERSON.ACTIVE, false)
                .where(PERSON.ID.eq(id.value()))
                .execute();
    }

    PersonId add(NewPerson person, String hash, boolean demo) {
        var crew = person.crew();
        var id = new PersonId(db.insertInto(PERSON)
                .set(PERSON.SIGN_IN_NAME, person.signInName())
                .set(PERSON.NAME, person.name())
                .set(PERSON.ROLE, person.role().code())
                .set(PERSON.EVERY_SITE, person.reach().everySite())
                .set(PERSON.CREW, crew == null ? null : crew.value())
                .set(PERSON.DEMO, demo)
                .set(PERSON.PASSWORD_HASH, hash)
                .returning(PERSON.ID)
                .fetchSingle(PERSON.ID));
        setSites(id, person.reach());
        return id;
    }

    /** Nothing is changed, and the answer is no, where the version is another by now. */
    boolean change(PersonId id, int version, NewPerson person, boolean active) {
        var crew = person.crew();
        int changed = db.update(PERSON)
                .set(PERSON.SIGN_IN_NAME, person.signInName())
                .set(PERSON.NAME, person.name())
                .set(PERSON.ROLE, person.role().code())
                .set(PERSON.EVERY_SITE, person.reach().everySite())
                .set(PERSON.CREW, crew == null ? null : crew.value())
                .set(PERSON.ACTIVE, active)
                .set(PERSON.VERSION, PERSON.VERSION.plus(1))
                .where(PERSON.ID.eq(id.value()), PERSON.VERSION.eq(version))
                .execute();
        if (changed == 1) setSites(id, person.reach());
        return changed == 1;
    }

    /**
     * Whoever has a password of their own is no sample person any more.
     *
     * @param givenAt when somebody else set it; null where the person did
     */
    void setPassword(PersonId id, String hash, @Nullable Instant givenAt) {
        db.update(PERSON)
                .set(PERSON.PASSWORD_HASH, hash)
                .set(PERSON.PASSWORD_GIVEN_AT, givenAt)
                .set(PERSON.DEMO, false)
                .set(PERSON.VERSION, PERSON.VERSION.plus(1))
                .where(PERSON.ID.eq(id.value()))
                .execute();
    }

    /** Somebody else set the password that the person begins with. */
    void passwordGiven(PersonId id, Instant at) {
        db.update(PERSON)
                .set(PERSON.PASSWORD_GIVEN_AT, at)
                .where(PERSON.ID.eq(id.value()))
                .execute();
    }

    /** What stands for the name; nothing lets them in any more. What they did, at which sites and in which crew, stays. */
    void takeAway(PersonId id, String placeholder, Instant at) {
        db.update(PERSON)
                .set(PERSON.SIGN_IN_NAME, placeholder)
                .set(PERSON.NAME, placeholder)
                .set(PERSON.PASSWORD_HASH, Passwords.hash(Passwords.random()))
                .set(PERSON.ACTIVE, false)
                .set(PERSON.TAKEN_AWAY, true)
                .set(PERSON.SIGNED_OUT_AT, at)
                .setNull(PERSON.LANGUAGE)
                .setNull(PERSON.RULER)
                .setNull(PERSON.PASSWORD_GIVEN_AT)
                .set(PERSON.VERSION, PERSON.VERSION.plus(1))
                .where(PERSON.ID.eq(id.value()))
                .execute();
    }

    int namesakes(PersonId id, String name) {
        return db.fetchCount(
                PERSON, DSL.lower(PERSON.NAME).eq(name.toLowerCase(Locale.ROOT)), PERSON.ID.ne(id.value()));
    }

    void signOut(PersonId id, Instant at) {
        db.update(PERSON)
                .set(PERSON.SIGNED_OUT_AT, at)
                .where(PERSON.ID.eq(id.value()))
                .execute();
    }

    /** Others who change administrators wait until this transaction ends. */
    int activeAdministrators() {
        return db.selectFrom(PERSON)
                .where(PERSON.ROLE.in(Role.ADMINISTRATOR.code(), Role.CONTRACTOR.code()), PERSON.ACTIVE.isTrue())
                .forUpdate()
                .fetch()
                .size();
    }

    Person person(PersonRecord row) {
        return new Person(
                new PersonId(row.getId()),
                row.getSignInName(),
                row.getName(),
                Coded.of(Role.class, row.getRole()),
                row.getEverySite() ? Reach.EVERYWHERE : sites(row.getId()),
                row.getCrew() == null ? null : new CrewId(row.getCrew()),
                row.getDemo(),
                reading(row));
    }

    void setReading(PersonId id, Reading reading) {
        db.update(PERSON)
                .set(PERSON.LANGUAGE, reading.language().code())
                .set(PERSON.RULER, reading.ruler().code())
                .where(PERSON.ID.eq(id.value()))
                .execute();
    }

    /** @param over whether it takes the place of one that was chosen before */
    void setLanguage(PersonId id, Language language, boolean over) {
        db.update(PERSON)
                .set(PERSON.LANGUAGE, language.code())
                .where(PERSON.ID.eq(id.value()), over ? DSL.noCondition() : PERSON.LANGUAGE.isNull())
                .execute();
    }

    private static Reading reading(PersonRecord row) {
        var reading = Reading.USUAL;
        if (row.getLanguage() != null) reading = reading.in(Coded.of(Language.class, row.getLanguage()));
        return row.getRuler() == null ? reading : reading.by(Coded.of(Ruler.class, row.getRuler()));
    }

    private Reach sites(long id) {
        return Reach.of(db.select(PERSON_SITE.SITE)
                .from(PERSON_SITE)
                .where(PERSON_SITE.PERSON_ID.eq(id))
                .fetch(row -> new SiteId(row.value1())));
    }

    private void setSites(PersonId id, Reach reach) {
        db.deleteFrom(PERSON_SITE).where(PERSON_SITE.PERSON_ID.eq(id.value())).execute();
        for (var site : reach.sites())
            db.insertInto(PERSON_SITE)
                    .set(PERSON_SITE.PERSON_ID, id.value())
                    .set(PERSON_SITE.SITE, site.value())
                    .execute();
    }
}
