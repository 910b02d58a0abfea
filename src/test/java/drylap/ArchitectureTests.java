package drylap;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

class ArchitectureTests {
    @Test
    void modules_touch_only_what_they_say_they_touch() {
        ApplicationModules.of(Drylap.class).verify();
    }
}
