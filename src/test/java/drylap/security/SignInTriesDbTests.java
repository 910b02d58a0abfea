package drylap.security;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import drylap.DbTest;
import drylap.kernel.Reach;
import drylap.security.SignIns.Outcome;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;

/** Attacks on the door; numbers in brackets are requirements of OWASP ASVS 4.0.3. */
@DbTest
@Import(TestPeople.class)
class SignInTriesDbTests {
    @Autowired
    SignIns signIns;

    @Autowired
    TestPeople people;

    @Autowired
    People all;

    /** [2.2.1] */
    @Test
    void of_many_tries_at_once_five_are_looked_at_and_then_even_the_right_password_waits() throws Exception {
        var who = people.scheduler();
        List<Callable<Outcome>> tries = IntStream.range(0, 24)
                .<Callable<Outcome>>mapToObj(
                        i -> () -> signIns.enter(who.signInName(), "wrong password " + i, "at-once-" + i))
                .toList();
        List<Outcome> outcomes;
        try (var threads = Executors.newFixedThreadPool(tries.size())) {
            outcomes = threads.invokeAll(tries).stream()
                    .map(one -> one.resultNow())
                    .toList();
        }

        assertThat(outcomes)
                .filteredOn(Outcome.WrongNameOrPassword.class::isInstance)
                .hasSize(SignIns.FAILURES_OF_A_NAME);
        assertThat(signIns.enter(who.signInName(), TestPeople.PASSWORD, "at-once-later"))
                .isInstanceOf(Outcome.Wait.class);
    }

    /** [2.2.1] Whoever found a page left open does not learn the password from it. */
    @Test
    void whoever_is_in_guesses_the_password_no_oftener_than_at_the_door() {
        var who = people.scheduler();
        assertThat(signIns.confirm(who.id(), TestPeople.PASSWORD)).isInstanceOf(Outcome.In.class);

        for (int i = 0; i < SignIns.FAILURES_OF_A_NAME; i++)
            assertThat(signIns.confirm(who.id(), "wrong password " + i))
                    .isInstanceOf(Outcome.WrongNameOrPassword.class);

        assertThat(signIns.confirm(who.id(), TestPeople.PASSWORD)).isInstanceOf(Outcome.Wait.class);
    }

    /** What is let in counts for nothing: an office behind one address comes in every morning. */
    @Test
    void who_is_let_in_does_not_count_against_their_address() {
        var who = people.scheduler();
        for (int i = 0; i < SignIns.FAILURES_OF_AN_ADDRESS + 1; i++)
            assertThat(signIns.enter(who.signInName(), TestPeople.PASSWORD, "one-office"))
                    .isInstanceOf(Outcome.In.class);
    }

    /** [2.1.2, 2.1.3, 2.1.4, 2.1.9] */
    @Test
    void a_password_is_any_letters_and_each_of_them_counts() {
        var one = people.scheduler();
        for (String password : List.of(
                "ねこ いぬ とり うま!", "only small letters", "🪟🌧🧱 🪜🧰🏠 rain", "long cold rain ".repeat(4) + "ends")) {
            all.setPassword(one, one.id(), password);

            assertThat(signIns.enter(one.signInName(), password, "letters")).isInstanceOf(Outcome.In.class);
            String other = password.substring(0, password.length() - 1) + "?";
            assertThat(signIns.enter(one.signInName(), other, "letters"))
                    .isInstanceOf(Outcome.WrongNameOrPassword.class);
            assertThat(signIns.enter(one.signInName(), password, "letters")).isInstanceOf(Outcome.In.class);
        }
    }

    /** [3.3.2] */
    @Test
    void a_session_ends_twelve_hours_after_the_password_was_shown_however_busy_it_is() {
        var who = people.scheduler();

        assertThat(signIns.current(
                        who.id(), signIns.now().minus(Duration.ofHours(12)).plusSeconds(600)))
                .isPresent();
        assertThat(signIns.current(who.id(), signIns.now().minus(Duration.ofHours(12))))
                .isEmpty();
    }

    /** [5.1.3] PostgreSQL takes no text with a zero in it. */
    @Test
    void a_name_of_letters_that_no_name_has_is_wrong_like_any_other() {
        assertThat(signIns.enter("nobody\0\r\n" + UUID.randomUUID(), "wrong", "odd-names"))
                .isInstanceOf(Outcome.WrongNameOrPassword.class);
        assertThat(signIns.enter("x".repeat(100_000), "wrong", "odd-names"))
                .isInstanceOf(Outcome.WrongNameOrPassword.class);
    }

    /** [7.1.1, 7.1.3, 7.2.1, 7.3.1] */
    @Test
    void every_try_is_logged_by_number_and_never_with_what_was_typed() {
        var who = people.add(Role.TESTER, Reach.EVERYWHERE, "W1");
        var logged = logged(() -> {
            signIns.enter(who.signInName(), TestPeople.PASSWORD, "log-1");
            signIns.enter(who.signInName(), "typed-by-mistake", "log-1");
            signIns.enter("a-password-where\nthe-name-goes", "typed-by-mistake", "log-1");
            for (int i = 0; i < SignIns.FAILURES_OF_A_NAME; i++)
                signIns.enter(who.signInName(), "typed-by-mistake", "log-1");
        });

        String person = "person " + who.id().value();
        assertThat(logged)
                .startsWith(
                        "Signed in: %s, from log-1".formatted(person),
                        "Sign-in refused: %s, from log-1".formatted(person),
                        "Sign-in refused: nobody of that name, from log-1")
                .last()
                .isEqualTo("Sign-in not looked at after too many failures, from log-1");
        assertThat(String.join("\n", logged)).doesNotContain(TestPeople.PASSWORD, "typed-by", "where", "the-name");
    }

    private static List<String> logged(Runnable work) {
        var logger = (Logger) LoggerFactory.getLogger(SignIns.class);
        var before = logger.getLevel();
        var kept = new ListAppender<ILoggingEvent>();
        kept.start();
        logger.setLevel(Level.INFO);
        logger.addAppender(kept);
        try {
            work.run();
        } finally {
            logger.detachAppender(kept);
            logger.setLevel(before);
        }
        return kept.list.stream().map(ILoggingEvent::getFormattedMessage).toList();
    }
}
