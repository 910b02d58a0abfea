/** The log of what was done at each opening, with its photos, and the state that its replay gives. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "speech",
            "assembly",
            "sites",
            "security",
            "persistence",
            "platform",
            "pictures"
        })
package drylap.progress;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
