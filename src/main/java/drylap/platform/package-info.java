/** The database process, background work and the clock; knows no capability. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "persistence"})
package drylap.platform;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
