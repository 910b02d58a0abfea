package drylap.security;

import static drylap.persistence.jooq.Tables.API_TOKEN;
import static drylap.persistence.jooq.Tables.CALENDAR_LINK;
import static drylap.persistence.jooq.Tables.HISTORY_SEAL;
import static drylap.persistence.jooq.Tables.HISTORY_WORDS_GONE;
import static drylap.persistence.jooq.Tables.HOOK;
import static drylap.persistence.jooq.Tables.PERSON;
import static drylap.persistence.jooq.Tables.STEP_MARK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.DbTest;
import drylap.kernel.ChangedMeanwhile;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.security.SignIns.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.transaction.support.TransactionTemplate;

/** Someone who left something in every table goes; what a whole database still says of them is asked of the database itself. */
@DbTest
@Import(TestPeople.class)
class PeopleTakenAwayDbTests {
    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    PeopleTakenAway away;

    @Autowired
    KeptOfPerson kept;

    @Autowired
    People people;

    @Autowired
    SignIns signIns;

    @Autowired
    HistorySeals seals;

    @Autowired
    TestPeople testPeople;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    DSLContext db;

    private Person administrator =
            new Person(new PersonId(0), "nobody", "Nobody", Role.ADMINISTRATOR, Reach.NOWHERE, null, false);
    private PersonId id = new PersonId(0);
    private String surname = "";
    private String signInName = "";

    @BeforeEach
    void somebody_who_left_something_everywhere() throws IOException {
        int number = NUMBER.incrementAndGet();
        administrator = testPeople.add(Role.ADMINISTRATOR, Reach.NOWHERE, null);
        surname = "Quillfeather" + "abcdefghijklmnopqrstuvwxyz".charAt(number);
        signInName = "zq-" + surname.toLowerCase(java.util.Locale.ROOT);
        var person = new NewPerson(signInName, name(), Role.SCHEDULER, Reach.EVERYWHERE, null);
        id = people.add(administrator, person, TestPeople.PASSWORD);
        try (var sql = Objects.requireNonNull(getClass().getResourceAsStream("/security/what-a-person-left.sql"))) {
            db.connection(connection -> {
                try (var statement = connection.createStatement()) {
                    statement.execute(new String(sql.readAllBytes(), StandardCharsets.UTF_8)
                            .replaceAll("\\bID\\b", String.valueOf(id.value()))
                            .replace("NAME", name())
                            .replace("FORMER", "Zenobia Née-" + surname)
                            .replace("SIGNIN", signInName)
                            .replace("SITE", "AWAY" + number));
                }
            });
        }
        seals.run();
    }

    private String name() {
        return "Zenobia " + surname;
    }

    /** Rows of any table, bytes as well as words, in which it stands. */
    private List<String> whereItStands(String word) {
        String hex = HexFormat.of().formatHex(word.getBytes(StandardCharsets.UTF_8));
        List<String> found = new ArrayList<>();
        for (String table : db.fetch("""
                        select quote_ident(table_name) from information_schema.tables
                        where table_schema = 'public' and table_type = 'BASE TABLE'""").getValues(0, String.class))
            db.fetch(
                            "select to_jsonb(t)::text from %s t where to_jsonb(t)::text ilike ? or to_jsonb(t)::text like ?"
                                    .formatted(table),
                            "%" + word + "%",
                            "%" + hex + "%")
                    .forEach(row -> found.add(table + " " + row.get(0)));
        return found;
    }

    @Test
    void there_is_something_of_them_in_every_table_that_names_people() {
        assertThat(whereItStands(surname).stream()
                        .map(row -> row.substring(0, row.indexOf(' ')))
                        .distinct())
                .as("a table that names people by now is to be filled in what-a-person-left.sql")
                .containsAll(TextPlaces.ofPeople(db).stream()
                        .filter(table -> !table.equals("photo"))
                        .toList())
                .contains(
                        "person", "api_token", "hook", "hook_delivery", "kept_answer", "job", "sign_in_failure", "pin");
    }

    @Test
    void the_name_stands_nowhere_any_more_and_what_they_did_stays() {
        long marks = db.fetchCount(STEP_MARK);
        var taken = away.takeAway(administrator, id, 1);

        assertThat(whereItStands(surname)).isEmpty();
        assertThat(taken.formerNames()).containsExactly("Zenobia Née-" + surname);
        assertThat(taken.stays()).isEmpty();
        assertThat(db.fetchCount(STEP_MARK)).isEqualTo(marks);
        assertThat(db.select(STEP_MARK.PERSON, STEP_MARK.NOTE)
                        .from(STEP_MARK)
                        .where(STEP_MARK.PERSON_ID.eq(id.value()))
                        .fetchSingle()
                        .intoList())
                .containsExactly("person " + id.value(), "shims by person " + id.value());
    }

    @Test
    void the_preview_is_what_comes_of_it_and_changes_nothing() {
        var before = whereItStands(surname);
        var preview = away.preview(administrator, id);
        assertThat(whereItStands(surname)).isEqualTo(before);

        assertThat(away.takeAway(administrator, id, 1)).isEqualTo(preview);
    }

    @Test
    void nothing_lets_them_in_any_more() {
        away.takeAway(administrator, id, 1);

        assertThat(signIns.enter(signInName, TestPeople.PASSWORD, "here"))
                .isInstanceOf(Outcome.WrongNameOrPassword.class);
        assertThat(signIns.active(id)).isEmpty();
        assertThat(db.fetchCount(API_TOKEN, API_TOKEN.PERSON_ID.eq(id.value()), API_TOKEN.REVOKED_AT.isNull()))
                .isZero();
        assertThat(db.fetchCount(HOOK, HOOK.PERSON_ID.eq(id.value()), HOOK.ENDED_AT.isNull()))
                .isZero();
        assertThat(db.fetchCount(
                        CALENDAR_LINK, CALENDAR_LINK.PERSON_ID.eq(id.value()), CALENDAR_LINK.REVOKED_AT.isNull()))
                .isZero();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> people.setPassword(administrator, id, TestPeople.PASSWORD))
                .withMessageContaining("for good");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> away.takeAway(administrator, id, 2))
                .withMessageContaining("before");
    }

    @Test
    void the_history_can_still_be_checked_and_what_is_changed_under_its_cover_shows() {
        away.takeAway(administrator, id, 1);
        seals.run();

        var checked = SealCheck.of(db, Optional.empty());
        assertThat(checked.faults()).isEmpty();
        assertThat(checked.withoutName()).isPositive();
        assertThat(history())
                .contains("added person %d as scheduler, who is to choose a password".formatted(id.value()));

        long line = db.select(DSL.max(HISTORY_WORDS_GONE.CHANGE_ID))
                .from(HISTORY_WORDS_GONE)
                .fetchSingle(0, Long.class);
        assertThat(db.fetchSingle(HISTORY_SEAL, HISTORY_SEAL.CHANGE_ID.eq(line)).getNonce())
                .containsOnly(0);
        assertThat(faultsAfter("update change_log set what = 'nothing' where id = %d".formatted(line)))
                .singleElement()
                .asString()
                .contains("line %d".formatted(line));
        assertThat(faultsAfter("update history_words_gone set words_sha256 = repeat('a', 64) where change_id = %d"
                        .formatted(line)))
                .anyMatch(fault -> fault.contains("of which the history does not tell so"));
        assertThat(faultsAfter("delete from history_words_gone where change_id = %d".formatted(line)))
                .anyMatch(fault -> fault.contains("of which the history does not tell so"));
    }

    private List<String> history() {
        return db.fetch("select what from change_log").getValues(0, String.class);
    }

    /** What an administrator of the database could do, and is taken back here. */
    private List<String> faultsAfter(String sql) {
        return Objects.requireNonNull(transaction.execute(status -> {
            status.setRollbackOnly();
            db.execute("set local session_replication_role = replica");
            db.execute(sql);
            return SealCheck.of(db, Optional.empty()).faults();
        }));
    }

    /** In the very transaction that takes somebody away. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "update step_mark set line = 'head' where person_id = %d",
                "update step_mark set person = 'somebody else' where person_id = %d",
                "update step_mark set note = null where person_id = %d",
                "update handoff_act set at = at + interval '1 hour' where person_id = %d",
                "delete from step_mark where person_id = %d",
                "update change_log set what = 'nothing' where person_id = %d",
                "update history_seal set words_sha256 = repeat('a', 64) where seq > 0 * %d"
            })
    void only_the_name_may_change(String sql) {
        assertThatExceptionOfType(RuntimeException.class)
                .isThrownBy(() -> transaction.executeWithoutResult(_ -> {
                    away.takeAway(administrator, id, 1);
                    db.execute(sql.formatted(id.value()));
                }))
                .withMessageContaining("grows");
        assertThat(whereItStands(surname)).isNotEmpty();
    }

    @Test
    void nobody_takes_themselves_or_the_last_administrator_away_or_somebody_who_was_changed_meanwhile() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> away.preview(administrator, administrator.id()))
                .withMessageContaining("themselves");
        assertThatExceptionOfType(ChangedMeanwhile.class).isThrownBy(() -> away.takeAway(administrator, id, 7));
        var scheduler = testPeople.scheduler();
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> away.preview(scheduler, id));

        // whoever asks was signed off on another page meanwhile
        var last = testPeople.add(Role.ADMINISTRATOR, Reach.NOWHERE, null);
        transaction.executeWithoutResult(status -> {
            status.setRollbackOnly();
            db.update(PERSON)
                    .set(PERSON.ACTIVE, false)
                    .where(PERSON.ID.ne(last.id().value()))
                    .execute();
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> away.takeAway(administrator, last.id(), 1))
                    .withMessageContaining("last administrator");
        });
        assertThat(whereItStands(surname)).isNotEmpty();
    }

    @Test
    void somebody_else_of_the_same_name_keeps_it_in_what_they_did() {
        var other = people.add(
                administrator,
                new NewPerson(signInName + "-2", name(), Role.SCHEDULER, Reach.EVERYWHERE, null),
                TestPeople.PASSWORD);
        new History(db, java.time.Clock.systemUTC()).note(testPeople.person(other), null, "published plan 7");

        assertThat(away.takeAway(administrator, id, 1).namesakes()).isEqualTo(1);

        assertThat(testPeople.person(other).name()).isEqualTo(name());
        assertThat(whereItStands(surname)).hasSize(2).allMatch(row -> row.contains("\"%s\"".formatted(name())));
    }

    @Test
    void what_is_kept_of_them_is_told_to_them_and_to_whoever_manages_people() {
        String json = kept.json(administrator, id);

        assertThat(json)
                .contains("\"step_mark\"", "\"hook\"", "shims by zenobia", "ask " + name())
                .doesNotContain("password_hash", "secret", "$2a$");
        assertThat(kept.json(testPeople.person(id), id)).contains("\"step_mark\"");
        var scheduler = testPeople.scheduler();
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> kept.json(scheduler, id));
    }
}
