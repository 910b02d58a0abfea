/** The headless commands. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "platform",
            "keeping",
            "security",
            "speech",
            "assembly",
            "sites",
            "weather",
            "climate",
            "crews",
            "planning",
            "intake",
            "windowschedule",
            "audit",
            "risk",
            "season",
            "takeoff",
            "whatif"
        })
package drylap.cli;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
