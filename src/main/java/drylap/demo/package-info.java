/** The invented sample: loaded into a new database or at a wish, and taken away again. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "speech",
            "assembly",
            "sites",
            "crews",
            "forecasts",
            "security",
            "progress",
            "handoff",
            "planning",
            "calendars",
            "intake",
            "persistence",
            "platform"
        })
package drylap.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
