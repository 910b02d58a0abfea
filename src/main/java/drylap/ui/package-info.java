/** The page: week sheet, facades, laps, unplanned work. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "speech",
            "security",
            "assembly",
            "sites",
            "weather",
            "climate",
            "season",
            "takeoff",
            "forecasts",
            "crews",
            "calendars",
            "tokens",
            "hooks",
            "papers",
            "tables",
            "progress",
            "handoff",
            "roughopening",
            "planning",
            "raincall",
            "risk",
            "pace",
            "audit",
            "moving",
            "whatif",
            "intake",
            "demo",
            "windowschedule",
            "platform"
        })
package drylap.ui;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
