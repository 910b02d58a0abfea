package drylap.security;

import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** A database without people gets an administrator, whose password is told once and kept nowhere. */
@Component
final class FirstAdministrator {
    private static final String NAME = "administrator";
    private static final int AFTER_THE_SAMPLE = 10;

    private final People people;

    FirstAdministrator(People people) {
        this.people = people;
    }

    @Order(AFTER_THE_SAMPLE)
    @EventListener(ApplicationReadyEvent.class)
    void add() {
        people.addFirstAdministrator(NAME)
                .ifPresent(password ->
                        System.out.printf("First sign-in: name %s, password %s (shown this once)%n", NAME, password));
    }
}
