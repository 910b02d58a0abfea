/** Reads and writes job folders and plan folders, and keeps job folders in the database. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "assembly", "sites", "weather", "crews", "planning", "persistence"})
package drylap.intake;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
