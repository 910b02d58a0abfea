/** The door for scripts and other programs: JSON in, JSON out, the same rights as the screens. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "speech",
            "security",
            "platform",
            "assembly",
            "sites",
            "crews",
            "forecasts",
            "weather",
            "progress",
            "handoff",
            "planning",
            "calendars",
            "tokens",
            "resends",
            "pictures",
            "roughopening"
        })
package drylap.api;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
