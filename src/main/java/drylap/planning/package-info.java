/** Job folders in, plans out: labour, rules of the plan, the planner and what it publishes. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "speech",
            "assembly",
            "sites",
            "weather",
            "forecasts",
            "crews",
            "security",
            "progress",
            "persistence",
            "platform"
        })
package drylap.planning;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
