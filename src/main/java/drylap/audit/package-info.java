/** Judges any plan against the planning contract, with code of its own. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech", "assembly", "sites", "weather", "crews", "planning"})
package drylap.audit;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
