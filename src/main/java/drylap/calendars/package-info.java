/** A crew's visits of the published plan as a calendar that phones subscribe to (RFC 5545), and the secret links to it. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "speech",
            "assembly",
            "sites",
            "crews",
            "security",
            "planning",
            "takeoff",
            "persistence",
            "platform"
        })
package drylap.calendars;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
