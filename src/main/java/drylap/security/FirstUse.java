package drylap.security;

import drylap.kernel.Reach;
import drylap.speech.Saying;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Service;

/**
 * Lets the first person into a database without people: whoever can read what the process prints. The code is printed there once it is
 * needed and kept in memory only; it opens one account and is worth nothing afterwards.
 */
@Service
public final class FirstUse {
    private static final int AFTER_THE_SAMPLE = 10;
    /** After so many wrong ones another code is printed, so that guessing begins anew each time. */
    static final int MOST_TRIES = 10;

    private final People people;
    private @Nullable String code;
    private int tries;

    FirstUse(People people) {
        this.people = people;
    }

    /** What came of a try. */
    public sealed interface Outcome {
        record Made() implements Outcome {}

        /** Nothing was made; {@code why} says what was wrong and what would be accepted. */
        record Refused(Saying why) implements Outcome {}

        /** Somebody is in the book by now: sign in. */
        record NotFirst() implements Outcome {}
    }

    @Order(AFTER_THE_SAMPLE)
    @EventListener(ApplicationReadyEvent.class)
    void begin() {
        open();
    }

    /** Whether nobody is in the book yet; the code is printed with the first answer that says so. */
    public synchronized boolean open() {
        boolean nobody = people.none();
        if (nobody && code == null) print();
        if (!nobody) code = null;
        return nobody;
    }

    /**
     * Makes the first person.
     *
     * @param alone whether they plan as well as manage people
     */
    public synchronized Outcome make(String given, String name, String signInName, String password, boolean alone) {
        if (!open()) return new Outcome.NotFirst();
        if (!isTheCode(given)) return wrongCode();
        var person = new NewPerson(
                signInName,
                name,
                alone ? Role.CONTRACTOR : Role.ADMINISTRATOR,
                alone ? Reach.EVERYWHERE : Reach.NOWHERE,
                null);
        Optional<Saying> problem =
                person.problem().or(() -> Passwords.against(password, person.signInName(), person.name()));
        if (problem.isPresent()) return new Outcome.Refused(problem.get());
        boolean first = people.addFirst(person, password);
        code = null;
        return first ? new Outcome.Made() : new Outcome.NotFirst();
    }

    private boolean isTheCode(String given) {
        byte[] mine = String.valueOf(code).getBytes(StandardCharsets.UTF_8);
        byte[] theirs = given.replaceAll("[\\s-]", "")
                .toLowerCase(java.util.Locale.ROOT)
                .getBytes(StandardCharsets.UTF_8);
        return MessageDigest.isEqual(mine, theirs);
    }

    private Outcome wrongCode() {
        if (++tries >= MOST_TRIES) print();
        return new Outcome.Refused(
                Saying.of(
                        "The code is another one. Accepted: the newest code in the window in which Drylap was started, or in its log. It is printed there after \"First sign-in\"."));
    }

    private void print() {
        String now = Passwords.random().substring(0, 12);
        code = now;
        tries = 0;
        System.out.printf(
                "First sign-in: nobody can sign in yet. Open the page and give this code, which is good once: %s-%s-%s%n",
                now.substring(0, 4), now.substring(4, 8), now.substring(8));
    }

    /** For tests, which read no console. */
    synchronized String code() {
        open();
        return String.valueOf(code);
    }
}
