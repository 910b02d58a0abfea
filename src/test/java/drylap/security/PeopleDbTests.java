package drylap.security;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static drylap.persistence.jooq.Tables.PERSON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drylap.DbTest;
import drylap.kernel.ChangedMeanwhile;
import drylap.kernel.CrewId;
import drylap.kernel.Language;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.kernel.Reading;
import drylap.kernel.Ruler;
import drylap.kernel.SiteId;
import drylap.security.SignIns.Outcome;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.dao.DataAccessException;

@DbTest
@Import(TestPeople.class)
class PeopleDbTests {
    private static final String PASSWORD = "a long enough one";
    private static final Reach QUAY = Reach.of(List.of(new SiteId("QUAY"), new SiteId("NET")));

    @Autowired
    People people;

    @Autowired
    SignIns signIns;

    @Autowired
    TestPeople testPeople;

    @Autowired
    DSLContext db;

    private Person administrator =
            new Person(new PersonId(0), "nobody", "Nobody", Role.ADMINISTRATOR, Reach.NOWHERE, null, false);

    @BeforeEach
    void an_administrator() {
        administrator = testPeople.add(Role.ADMINISTRATOR, Reach.NOWHERE, null);
    }

    @Test
    void a_person_comes_back_as_described() {
        var asked = crewPerson();
        var id = people.add(administrator, asked, PASSWORD);

        assertThat(people.all(administrator))
                .filteredOn(listed -> listed.person().id().equals(id))
                .singleElement()
                .satisfies(listed -> {
                    assertThat(listed.person().reach()).isEqualTo(QUAY);
                    assertThat(listed.person().crew()).isEqualTo(new CrewId("window-1"));
                    assertThat(listed.person().role()).isEqualTo(Role.WINDOW_CREW);
                    assertThat(listed.active()).isTrue();
                });
    }

    @Test
    void the_password_is_kept_as_a_bcrypt_hash_only() {
        var id = people.add(administrator, crewPerson(), PASSWORD);

        String kept = db.select(PERSON.PASSWORD_HASH)
                .from(PERSON)
                .where(PERSON.ID.eq(id.value()))
                .fetchSingle()
                .value1();
        // the format of bcrypt: version 2a, 2b or 2y, cost, then 53 characters of salt and hash
        assertThat(kept).matches("\\$2[aby]\\$1[0-9]\\$.{53}").doesNotContain(PASSWORD);
    }

    @Test
    void short_and_overlong_passwords_are_refused_with_the_limit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> people.add(administrator, crewPerson(), "too short"))
                .withMessageContaining("9 characters; accepted: 12 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> people.add(administrator, crewPerson(), "ä".repeat(37)))
                .withMessageContaining("74 bytes; accepted: up to 72");
    }

    @Test
    void a_name_is_taken_whatever_its_letters_case() {
        var one = crewPerson();
        people.add(administrator, one, PASSWORD);
        var again =
                new NewPerson(one.signInName().toUpperCase(java.util.Locale.ROOT), "Other", Role.SCHEDULER, QUAY, null);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> people.add(administrator, again, PASSWORD))
                .withMessageContaining("is taken");
    }

    @Test
    void the_second_of_two_editors_changes_nothing() {
        var id = people.add(administrator, crewPerson(), PASSWORD);
        people.change(administrator, id, 1, crewPerson(), true);

        assertThatExceptionOfType(ChangedMeanwhile.class)
                .isThrownBy(() -> people.change(administrator, id, 1, crewPerson(), false));
        assertThat(testPeople.person(id).may(Operation.MARK_INSTALL)).isTrue();
    }

    @Test
    void the_first_sign_in_brings_the_language_and_only_a_choice_takes_its_place() {
        var id = people.add(administrator, crewPerson(), PASSWORD);
        assertThat(testPeople.person(id).reading()).isEqualTo(Reading.USUAL);

        people.cameIn(id, Language.SPANISH, false);
        people.cameIn(id, Language.ENGLISH, false);
        assertThat(testPeople.person(id).reading()).isEqualTo(Reading.USUAL.in(Language.SPANISH));

        people.cameIn(id, Language.ENGLISH, true);
        assertThat(testPeople.person(id).reading().language()).isEqualTo(Language.ENGLISH);

        var chosen = new Reading(Language.SPANISH, Ruler.INCHES);
        people.read(testPeople.person(id), chosen);
        assertThat(testPeople.person(id).reading()).isEqualTo(chosen);
    }

    @Test
    void the_last_administrator_stays() {
        var others = people.all(administrator).stream()
                .filter(one -> one.person().role() == Role.ADMINISTRATOR && one.active())
                .filter(one -> !one.person().id().equals(administrator.id()))
                .toList();
        for (var other : others)
            people.change(administrator, other.person().id(), other.version(), as(other.person()), false);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> people.change(administrator, administrator.id(), 1, as(administrator), false))
                .withMessageContaining("last administrator");
    }

    @Test
    void only_administrators_see_or_change_people() {
        var scheduler = testPeople.scheduler();
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> people.all(scheduler));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> people.add(scheduler, crewPerson(), PASSWORD));
        assertThatExceptionOfType(NotAllowed.class)
                .isThrownBy(() -> people.setPassword(scheduler, administrator.id(), PASSWORD));
        people.setPassword(scheduler, scheduler.id(), PASSWORD);
    }

    @Test
    void the_right_password_lets_in_and_a_wrong_one_does_not() {
        var asked = crewPerson();
        people.add(administrator, asked, PASSWORD);

        assertThat(signIns.enter(asked.signInName(), "another password", "a1"))
                .isInstanceOf(Outcome.WrongNameOrPassword.class);
        assertThat(signIns.enter(" " + asked.signInName().toUpperCase(java.util.Locale.ROOT), PASSWORD, "a1"))
                .isInstanceOf(Outcome.In.class);
        assertThat(signIns.enter("nobody-of-this-name", PASSWORD, "a1"))
                .isInstanceOf(Outcome.WrongNameOrPassword.class);
    }

    @Test
    void after_five_failures_even_the_right_password_waits() {
        var asked = crewPerson();
        people.add(administrator, asked, PASSWORD);
        for (int i = 0; i < 5; i++) signIns.enter(asked.signInName(), "wrong password " + i, "b" + i);

        assertThat(signIns.enter(asked.signInName(), PASSWORD, "b9")).isInstanceOf(Outcome.Wait.class);
    }

    @Test
    void an_address_that_tries_many_names_waits() {
        for (int i = 0; i < 20; i++) signIns.enter("guess-" + UUID.randomUUID(), "wrong", "one-address");

        assertThat(signIns.enter("another", "wrong", "one-address")).isInstanceOf(Outcome.Wait.class);
        assertThat(signIns.enter("another", "wrong", "other-address")).isInstanceOf(Outcome.WrongNameOrPassword.class);
    }

    @Test
    void signing_out_everywhere_ends_what_began_before_only() {
        var id = people.add(administrator, crewPerson(), PASSWORD);
        var before = signIns.now();
        assertThat(signIns.current(id, before)).isPresent();

        people.signOutEverywhere(administrator, id);

        assertThat(signIns.current(id, before)).isEmpty();
        assertThat(signIns.current(id, signIns.now().plusMillis(1))).isPresent();
    }

    @Test
    void whoever_is_signed_off_neither_comes_in_nor_goes_on() {
        var asked = crewPerson();
        var id = people.add(administrator, asked, PASSWORD);
        people.change(administrator, id, 1, asked, false);

        assertThat(signIns.enter(asked.signInName(), PASSWORD, "c1")).isInstanceOf(Outcome.WrongNameOrPassword.class);
        assertThat(signIns.current(id, signIns.now().plusMillis(1))).isEmpty();
    }

    @Test
    void the_history_only_grows() {
        people.add(administrator, crewPerson(), PASSWORD);

        assertThatThrownBy(() -> db.update(CHANGE_LOG)
                        .set(CHANGE_LOG.PERSON, "someone else")
                        .execute())
                .isInstanceOf(DataAccessException.class);
        assertThatThrownBy(() -> db.deleteFrom(CHANGE_LOG).execute()).isInstanceOf(DataAccessException.class);
    }

    private static NewPerson as(Person one) {
        return new NewPerson(one.signInName(), one.name(), one.role(), one.reach(), one.crew());
    }

    private static NewPerson crewPerson() {
        return new NewPerson(
                "crew." + UUID.randomUUID(), "Crew Person", Role.WINDOW_CREW, QUAY, new CrewId("window-1"));
    }
}
