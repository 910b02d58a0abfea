/** Who hands which opening to whom and in what state: hold points, releases, acceptances, returns, water tests, bookings. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "speech",
            "assembly",
            "sites",
            "crews",
            "security",
            "progress",
            "persistence",
            "platform"
        })
package drylap.handoff;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
