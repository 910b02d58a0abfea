/** The headless commands. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"kernel", "assembly", "sites", "weather", "planning", "intake", "audit", "whatif"})
package drylap.cli;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
