/** The door for scripts and other programs: JSON in, JSON out, the same rights as the screens. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "speech",
            "security",
            "assembly",
            "sites",
            "progress",
            "handoff",
            "planning",
            "calendars"
        })
package drylap.api;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
