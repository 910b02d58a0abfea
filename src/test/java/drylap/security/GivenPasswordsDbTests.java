package drylap.security;

import static drylap.persistence.jooq.Tables.CHANGE_LOG;
import static drylap.persistence.jooq.Tables.PERSON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drylap.DbTest;
import drylap.kernel.PersonId;
import drylap.kernel.Reach;
import drylap.security.SignIns.Outcome;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;

/** A password that somebody else set; numbers in brackets are requirements of OWASP ASVS 4.0.3. */
@DbTest
@Import(TestPeople.class)
class GivenPasswordsDbTests {
    private static final String GIVEN = "eight cold kitchens hum";
    private static final String OWN = "seven warm ladders sing";

    @Autowired
    People people;

    @Autowired
    SignIns signIns;

    @Autowired
    TestPeople testPeople;

    @Autowired
    DSLContext db;

    private final NewPerson asked =
            new NewPerson("given." + UUID.randomUUID(), "Given Person", Role.ADMINISTRATOR, Reach.EVERYWHERE, null);

    private Person administrator =
            new Person(new PersonId(0), "nobody", "Nobody", Role.ADMINISTRATOR, Reach.NOWHERE, null, false);
    private PersonId id = new PersonId(0);

    @BeforeEach
    void somebody_is_added() {
        administrator = testPeople.add(Role.ADMINISTRATOR, Reach.NOWHERE, null);
        id = people.add(administrator, asked, GIVEN);
    }

    private Person inSession() {
        return signIns.current(id, signIns.now().plusMillis(1)).orElseThrow();
    }

    private List<String> history() {
        return db.select(CHANGE_LOG.WHAT)
                .from(CHANGE_LOG)
                .orderBy(CHANGE_LOG.ID)
                .fetch(CHANGE_LOG.WHAT);
    }

    /** [2.3.1, 2.5.1] */
    @Test
    void whoever_comes_in_by_it_may_nothing_before_they_chose_one() {
        assertThat(signIns.enter(asked.signInName(), GIVEN, "given")).isInstanceOf(Outcome.In.class);
        var who = inSession();

        assertThat(who.choosesPassword()).isTrue();
        assertThat(Arrays.stream(Operation.values()).filter(who::may)).isEmpty();
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> people.all(who));
        assertThatExceptionOfType(NotAllowed.class).isThrownBy(() -> who.demandInPerson(id));

        people.setPassword(who, id, OWN);

        assertThat(signIns.enter(asked.signInName(), GIVEN, "given")).isInstanceOf(Outcome.WrongNameOrPassword.class);
        assertThat(signIns.enter(asked.signInName(), OWN, "given")).isInstanceOf(Outcome.In.class);
        assertThat(inSession().choosesPassword()).isFalse();
        assertThat(inSession().may(Operation.SEE_PEOPLE)).isTrue();
        assertThat(history())
                .contains(
                        "added Given Person as administrator, who is to choose a password",
                        "set the password of Given Person, in place of the one that was set for them");
    }

    /** [2.3.1] */
    @Test
    void the_very_password_that_was_set_is_none_of_their_own() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> people.setPassword(inSession(), id, GIVEN))
                .withMessageContaining("the password that was set for you; accepted: another one");
        assertThat(inSession().choosesPassword()).isTrue();

        people.setPassword(inSession(), id, OWN);
        people.setPassword(inSession(), id, OWN);
    }

    /** [2.3.1] */
    @Test
    void it_runs_out_after_a_week_and_says_so_to_nobody_who_does_not_have_it() {
        ago(Duration.ofDays(SignIns.GIVEN_DAYS).minusHours(1));
        assertThat(signIns.enter(asked.signInName(), GIVEN, "late")).isInstanceOf(Outcome.In.class);

        ago(Duration.ofDays(SignIns.GIVEN_DAYS));
        assertThat(signIns.enter(asked.signInName(), GIVEN, "late")).isInstanceOf(Outcome.RanOut.class);
        assertThat(signIns.enter(asked.signInName(), OWN, "late")).isInstanceOf(Outcome.WrongNameOrPassword.class);

        people.setPassword(administrator, id, OWN);
        assertThat(signIns.enter(asked.signInName(), OWN, "late")).isInstanceOf(Outcome.In.class);
    }

    private void ago(Duration since) {
        db.update(PERSON)
                .set(PERSON.PASSWORD_GIVEN_AT, signIns.now().minus(since))
                .where(PERSON.ID.eq(id.value()))
                .execute();
    }

    @Test
    void one_that_is_set_again_by_somebody_else_is_to_be_changed_again() {
        people.setPassword(inSession(), id, OWN);
        assertThat(inSession().choosesPassword()).isFalse();

        people.setPassword(administrator, id, GIVEN);

        assertThat(inSession().choosesPassword()).isTrue();
        assertThat(history()).contains("set the password of Given Person, who is to choose another one");
    }

    @Test
    void whoever_manages_people_sets_their_own_for_good() {
        people.setPassword(administrator, administrator.id(), OWN);

        assertThat(signIns.current(administrator.id(), signIns.now().plusMillis(1)))
                .get()
                .matches(who -> !who.choosesPassword() && who.may(Operation.CHANGE_PEOPLE));
    }

    @Test
    void programs_of_the_person_and_people_of_the_sample_and_of_before_go_on() {
        assertThat(signIns.active(id)).get().matches(who -> who.may(Operation.SEE_PEOPLE));

        String sample = "sample." + UUID.randomUUID();
        people.addDemo(new NewPerson(sample, "Sample Person", Role.SCHEDULER, Reach.EVERYWHERE, null));
        var in = (Outcome.In) signIns.enter(sample, DemoPassword.of(sample), "sample");
        assertThat(signIns.current(in.id(), signIns.now())).get().matches(who -> who.may(Operation.SEE_FOLDERS));
    }
}
