package drylap;

import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** Says on the console where the page is, once it answers; a process without a page says nothing. */
@Component
class ReadyLine {
    private final Environment environment;

    ReadyLine(Environment environment) {
        this.environment = environment;
    }

    @Order(0)
    @EventListener(ApplicationReadyEvent.class)
    void say() {
        String port = environment.getProperty("local.server.port");
        if (port != null) System.out.println("Drylap is ready at http://localhost:" + port);
    }
}
