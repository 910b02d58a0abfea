/** Sites, facades and openings as designed. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "speech", "assembly", "persistence"})
package drylap.sites;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
