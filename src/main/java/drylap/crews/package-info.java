/** Crews, trades, shifts, absences and travel times. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech", "assembly", "security", "persistence", "platform"})
package drylap.crews;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
