/** The database process, background work, the clock and stored files; knows no capability. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "persistence"})
package drylap.platform;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
