package drylap.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import drylap.DbTest;
import drylap.security.DemoPassword;
import drylap.security.History;
import drylap.security.People;
import drylap.security.Person;
import drylap.security.SignIns;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

@DbTest
@Import(DemoPeople.class)
@TestPropertySource(properties = {"drylap.demo=sample-data/harbour-week", "drylap.demo-people=allow"})
@DirtiesContext(classMode = DirtiesContext.ClassMode.AFTER_CLASS)
class DemoPeopleDbTests {
    private static final String OTHERS = "jdbc:postgresql://somewhere/else";

    @Autowired
    People people;

    @Autowired
    SignIns signIns;

    @Autowired
    History history;

    @Test
    void sample_people_sign_in_here_and_are_refused_on_a_database_that_others_keep() {
        assertThat(people.demo()).extracting(Person::signInName).contains("ines", "mara", "sol");
        assertThat(signIns.enter("ines", DemoPassword.of("ines"), "here")).isInstanceOf(SignIns.Outcome.In.class);

        assertThatExceptionOfType(DemoPeopleRefused.class)
                .isThrownBy(() -> new DemoPeople("", OTHERS, "", people, history))
                .withMessageContaining("ines")
                .withMessageContaining("DRYLAP_DEMO_PEOPLE=allow");
        assertThatCode(() -> new DemoPeople("", OTHERS, "allow", people, history))
                .doesNotThrowAnyException();

        var ines = people.demo().stream()
                .filter(one -> one.signInName().equals("ines"))
                .findFirst()
                .orElseThrow();
        people.setPassword(ines, ines.id(), "something of her own");
        assertThat(people.demo()).extracting(Person::signInName).doesNotContain("ines");
    }
}
