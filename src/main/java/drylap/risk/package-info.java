/** What weather, work and deliveries may still do to a plan: it is replayed many times under drawn ones. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "assembly",
            "sites",
            "weather",
            "climate",
            "crews",
            "planning",
            "security",
            "persistence",
            "platform"
        })
package drylap.risk;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
