/** The door for scripts and other programs: JSON in, JSON out, the same rights as the screens. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "security",
            "assembly",
            "sites",
            "progress",
            "handoff",
            "planning",
            "calendars",
            "roughopening"
        })
package drylap.api;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
