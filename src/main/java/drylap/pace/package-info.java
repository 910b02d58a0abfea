/** How long installs really take: observed in the log, learnt with care, suggested to the scheduler and never put in force unasked. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"kernel", "speech", "assembly", "sites", "crews", "progress", "planning", "security"})
package drylap.pace;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
