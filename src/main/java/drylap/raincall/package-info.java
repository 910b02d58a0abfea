/** When rain comes: which open openings to close or cover, and in what order, so that the least water gets in. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "assembly", "sites", "weather", "planning"})
package drylap.raincall;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
