/** Reads and writes job folders and plan folders as files; the database is not its business. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "speech",
            "assembly",
            "sites",
            "weather",
            "climate",
            "crews",
            "planning",
            "risk",
            "season",
            "takeoff",
            "whatif"
        })
package drylap.intake;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
