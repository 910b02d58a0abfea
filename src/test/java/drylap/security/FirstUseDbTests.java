package drylap.security;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.DbTest;
import drylap.kernel.Reach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

/** The first account of a database of its own: one story, since it can be made only once. */
@DbTest
@TestPropertySource(properties = "drylap.test-database=first-use")
@DirtiesContext(classMode = DirtiesContext.ClassMode.AFTER_CLASS)
class FirstUseDbTests {
    private static final String PASSWORD = "long enough for this";

    @Autowired
    FirstUse first;

    @Autowired
    People people;

    @Autowired
    SignIns signIns;

    @Autowired
    TestPeople testPeople;

    @Test
    void the_code_that_was_printed_makes_one_account_and_then_none() {
        assertThat(first.open()).isTrue();
        String code = first.code();

        assertThat(why(first.make("abcd-efgh-jkmn", "Nils Ohm", "nils", PASSWORD, true)))
                .contains("The code is another one", "First sign-in");
        assertThat(why(first.make(code, "Nils Ohm", "n", PASSWORD, true)))
                .contains("sign-in name \"n\"", "accepted: 2 to 80");
        assertThat(why(first.make(code, " ", "nils", PASSWORD, true))).contains("the name has 0 characters");
        assertThat(why(first.make(code, "Nils Ohm", "nils", "short", true))).contains("accepted: 12 or more");
        assertThat(people.none()).isTrue();

        for (int i = 0; i < FirstUse.MOST_TRIES; i++) first.make("wrong", "Nils Ohm", "nils", PASSWORD, true);
        assertThat(why(first.make(code, "Nils Ohm", "nils", PASSWORD, true)))
                .as("guessing begins anew with another code")
                .contains("The code is another one");

        String newest = first.code();
        String asTyped = newest.substring(0, 4).toUpperCase(java.util.Locale.ROOT) + " - " + newest.substring(4);
        assertThat(first.make(asTyped, "Nils Ohm", "nils", PASSWORD, true)).isInstanceOf(FirstUse.Outcome.Made.class);

        var nils = signIns.enter("nils", PASSWORD, "here");
        assertThat(nils).isInstanceOf(SignIns.Outcome.In.class);
        var who = testPeople.person(((SignIns.Outcome.In) nils).id());
        assertThat(who.role()).isEqualTo(Role.CONTRACTOR);
        assertThat(who.reach()).isEqualTo(Reach.EVERYWHERE);
        assertThat(signIns.current(who.id(), signIns.now()))
                .as("chosen by themselves")
                .get()
                .matches(one -> !one.choosesPassword());
        assertThat(first.open()).isFalse();
        assertThat(first.make(newest, "Eve Ray", "eve", PASSWORD, false)).isInstanceOf(FirstUse.Outcome.NotFirst.class);
        assertThat(people.all(who)).hasSize(1);
        theLastWhoManagesPeopleStays(who);
    }

    private void theLastWhoManagesPeopleStays(Person who) {
        var less = new NewPerson("nils", "Nils Ohm", Role.SCHEDULER, Reach.EVERYWHERE, null);
        org.assertj.core.api.Assertions.assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> people.change(who, who.id(), 1, less, true))
                .withMessageContaining("last administrator");
    }

    private static String why(FirstUse.Outcome outcome) {
        assertThat(outcome).isInstanceOf(FirstUse.Outcome.Refused.class);
        return ((FirstUse.Outcome.Refused) outcome).why().words();
    }
}
