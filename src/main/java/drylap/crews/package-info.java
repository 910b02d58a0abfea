/** Crews, trades, shifts and travel times. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "assembly", "persistence"})
package drylap.crews;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
